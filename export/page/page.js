// The page: plays, clock, controls, storyboard.
const calm = matchMedia("(prefers-reduced-motion: reduce)");

// Beeps by Web Audio; a page may not sound before it is touched.
const sound = {
  context: null,
  wake() {
    const Context = window.AudioContext || window.webkitAudioContext;
    if (!this.context && Context) this.context = new Context();
    if (this.context && this.context.state === "suspended") this.context.resume();
  },
  // beep sounds a kind in so many seconds.
  beep(kind, wait) {
    if (!this.context || !byId("beeps").checked) return;
    const at = this.context.currentTime + Math.max(wait, 0);
    const tone = this.context.createOscillator(), gain = this.context.createGain();
    tone.frequency.value = data.hz[kind];
    gain.gain.setValueAtTime(0, at);
    gain.gain.linearRampToValueAtTime(0.3, at + 0.002);
    gain.gain.linearRampToValueAtTime(0, at + 0.09);
    tone.connect(gain).connect(this.context.destination);
    tone.start(at);
    tone.stop(at + 0.1);
  },
};

const beats = 3, beat = 0.7; // of the count-in, s
const before = 1.5, after = 0.8; // how long a crossing of paths is warned of, s

const page = {
  stages: data.plays.map((_, i) => new Stage(i)),
  number: 0, t: 0, speed: 1, playing: false, started: 0, beeped: 0,

  get stage() { return this.stages[this.number]; },
  get play() { return data.plays[this.number]; },

  open(number) {
    this.pause();
    this.stages.forEach((s, i) => s.svg.toggleAttribute("hidden", i !== number));
    this.number = number;
    byId("title").textContent = this.play.title;
    byId("situation").textContent = this.play.situation;
    byId("moment").max = Math.round((this.play.to - this.play.from) * 1000);
    this.listPlayers();
    this.listLines();
    this.listCrossings();
    for (const b of byId("plays").querySelectorAll("button")) b.setAttribute("aria-pressed", String(+b.dataset.play === number));
    this.stage.turn(byId("turn").getAttribute("aria-pressed") === "true");
    this.seek(this.play.from);
  },

  seek(t) {
    this.t = Math.min(Math.max(t, this.play.from), this.play.to);
    this.stage.draw(this.t);
    this.warn(this.crossingAt(this.t));
    byId("moment").value = Math.round((this.t - this.play.from) * 1000);
    byId("moment").setAttribute("aria-valuetext", this.t.toFixed(2) + " " + data.say.seconds);
    byId("clock").textContent = this.t.toFixed(2) + " " + data.say.seconds;
    this.say("caption", this.play.captions.filter((c) => c.from <= this.t && this.t < c.to).map((c) => c.text).join("\n"));
    this.say("event", this.eventAt(this.t).text);
  },

  // The crossing to be warned of: while counting in the first, then one that is
  // about to come or has just been. What stands still stands for all until its
  // next event.
  crossingAt(t) {
    const all = this.play.crossings;
    if (this.playing && performance.now() / 1000 < this.started) return all[0];
    const next = !this.playing || calm.matches ? this.play.events.find((e) => e.t > t + 1e-4) : undefined;
    const from = t - after * this.speed, to = (next ? next.t : t) + before * this.speed;
    return all.find((c) => c.t >= from && c.t <= to);
  },

  warn(crossing) {
    this.stage.warn(crossing);
    this.say("crossing", crossing ? crossing.text : "");
    byId("crossing").toggleAttribute("hidden", !crossing);
  },

  // say changes a text only if it differs: screen readers read out every change.
  say(id, text) { if (byId(id).textContent !== text) byId(id).textContent = text; },

  eventAt(t) { return this.play.events.filter((e) => e.t <= t + 1e-6).pop() || this.play.events[0]; },

  step(by) {
    this.pause();
    const times = this.play.events.map((e) => e.t);
    const next = by > 0 ? times.find((t) => t > this.t + 1e-4) : times.filter((t) => t < this.t - 1e-4).pop();
    if (next !== undefined) this.seek(next);
  },

  toggle() { this.playing ? this.pause() : this.start(); },

  start() {
    sound.wake();
    if (this.t >= this.play.to - 1e-4) this.seek(this.play.from);
    const lead = byId("count").checked ? beats * beat : 0;
    for (let i = 0; i < beats && lead; i++) sound.beep("count", i * beat);
    this.playing = true;
    this.from = this.t;
    this.started = performance.now() / 1000 + lead;
    this.beeped = this.play.beeps.findIndex((b) => b.t >= this.t - 1e-6);
    if (this.beeped < 0) this.beeped = this.play.beeps.length;
    byId("go").textContent = data.say.pause;
    this.request = requestAnimationFrame(() => this.tick());
  },

  pause() {
    this.playing = false;
    cancelAnimationFrame(this.request);
    clearTimeout(this.rest);
    byId("go").textContent = data.say.play;
  },

  tick() {
    if (!this.playing) return;
    const t = Math.max(this.from + (performance.now() / 1000 - this.started) * this.speed, this.from);
    const wait = Math.max(this.started - performance.now() / 1000, 0);
    if (wait < 0.1) this.beepUntil(t, wait);
    this.seek(calm.matches ? Math.max(this.eventAt(t).t, this.from) : t);
    if (t < this.play.to) this.request = requestAnimationFrame(() => this.tick());
    else this.ended();
  },

  // Beeps are ordered a little ahead, so that the audio clock keeps their time; wait
  // is what is left of the count-in.
  beepUntil(t, wait) {
    const ahead = 0.1 * this.speed, beeps = this.play.beeps;
    for (; this.beeped < beeps.length && beeps[this.beeped].t <= t + ahead; this.beeped++) {
      sound.beep(beeps[this.beeped].kind, (beeps[this.beeped].t - t) / this.speed + wait);
    }
  },

  ended() {
    this.pause();
    this.seek(this.play.to);
    if (byId("repeat").checked) this.rest = setTimeout(() => { this.seek(this.play.from); this.start(); }, 2500);
  },

  setSpeed(speed) {
    const again = this.playing;
    this.pause();
    this.speed = speed;
    for (const b of document.querySelectorAll("[data-speed]")) b.setAttribute("aria-pressed", String(+b.dataset.speed === speed));
    if (again) this.resume();
  },

  // resume goes on without counting in.
  resume() {
    const count = byId("count"), was = count.checked;
    count.checked = false;
    this.start();
    count.checked = was;
  },

  listPlayers() {
    const select = byId("follow"), was = select.value;
    while (select.options.length > 1) select.remove(1);
    for (const p of this.play.players) select.add(new Option(p.name, p.id, false, p.id === was));
    this.stage.followed = select.value;
  },

  listLines() {
    const all = [...this.play.captions, ...this.play.goes].sort((a, b) => a.from - b.from);
    byId("lines").textContent = "";
    for (const l of all) byId("lines").append(this.entry(l.from, l.text));
  },

  listCrossings() {
    byId("crossings").textContent = "";
    for (const c of this.play.crossings) byId("crossings").append(this.entry(c.t, c.text));
  },

  // entry is an item of a list that goes to a moment.
  entry(t, text) {
    const item = document.createElement("li"), b = document.createElement("button");
    b.type = "button";
    b.textContent = t.toFixed(2) + " " + data.say.seconds + "  " + text;
    b.addEventListener("click", () => { this.pause(); this.seek(t); });
    item.append(b);
    return item;
  },

  listPlays() {
    data.plays.forEach((p, i) => {
      const item = document.createElement("li"), b = document.createElement("button");
      b.type = "button";
      b.dataset.play = i;
      b.textContent = p.title || p.situation;
      b.addEventListener("click", () => this.open(i));
      item.append(b);
      byId("plays").append(item);
    });
  },

  // storyboard draws every event of every play once, for the printer.
  storyboard() {
    const board = byId("storyboard"), kept = this.t;
    board.textContent = "";
    this.stages.forEach((stage) => {
      const title = document.createElement("h2");
      title.textContent = stage.play.title;
      board.append(title);
      const shown = stage.t === undefined ? stage.play.from : stage.t, followed = stage.followed;
      stage.followed = "";
      const shownEvents = stage.play.events.filter((e) => !e.name.endsWith(".net"));
      shownEvents.forEach((e, i) => board.append(this.frame(stage, e, i + 1, shownEvents[i + 1])));
      stage.followed = followed;
      stage.draw(shown);
    });
    this.seek(kept);
  },

  // frame is the picture of an event, with the crossings until the next one.
  frame(stage, e, number, next) {
    const crossings = stage.play.crossings.filter((c) => e.t <= c.t && (!next || c.t < next.t));
    stage.draw(e.t);
    stage.warn(crossings[0]);
    const figure = document.createElement("figure"), words = document.createElement("figcaption"), svg = stage.svg.cloneNode(true);
    svg.removeAttribute("id");
    svg.removeAttribute("hidden");
    words.textContent = `${number}. ${e.text} ${e.t.toFixed(2)} ${data.say.seconds}`;
    figure.append(svg, words);
    for (const c of crossings) {
      const p = document.createElement("p");
      p.className = "crossing";
      p.textContent = c.text;
      figure.append(p);
    }
    for (const c of stage.play.captions.filter((c) => c.from <= e.t && e.t < c.to)) {
      const p = document.createElement("p");
      p.textContent = c.text;
      figure.append(p);
    }
    return figure;
  },

  keys: {
    " ": (p) => p.toggle(), ArrowRight: (p) => p.step(1), PageDown: (p) => p.step(1), ArrowLeft: (p) => p.step(-1), PageUp: (p) => p.step(-1),
    Home: (p) => { p.pause(); p.seek(p.play.from); }, End: (p) => { p.pause(); p.seek(p.play.to); },
  },

  key(e) {
    const own = e.target.closest("button, input, select, summary, textarea");
    if (e.ctrlKey || e.altKey || e.metaKey || !this.keys[e.key] || (own && !e.key.startsWith("Page"))) return;
    e.preventDefault();
    this.keys[e.key](this);
  },

  listen() {
    byId("go").addEventListener("click", () => this.toggle());
    byId("back").addEventListener("click", () => this.step(-1));
    byId("next").addEventListener("click", () => this.step(1));
    byId("moment").addEventListener("input", (e) => { this.pause(); this.seek(this.play.from + e.target.value / 1000); });
    for (const b of document.querySelectorAll("[data-speed]")) b.addEventListener("click", () => this.setSpeed(+b.dataset.speed));
    byId("follow").addEventListener("change", (e) => { this.stage.followed = e.target.value; this.seek(this.t); });
    byId("turn").addEventListener("click", (e) => {
      const on = e.currentTarget.getAttribute("aria-pressed") !== "true";
      e.currentTarget.setAttribute("aria-pressed", String(on));
      this.stage.turn(on);
    });
    byId("stage").addEventListener("click", () => this.toggle());
    byId("print").addEventListener("click", () => window.print());
    window.addEventListener("beforeprint", () => this.storyboard());
    document.addEventListener("keydown", (e) => this.key(e));
  },
};

page.listPlays();
page.listen();
page.setSpeed(1);
page.open(0);
new Drill();
