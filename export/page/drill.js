// How often a sign is hidden, a fake, a switch; the others say stay. Our choice:
// seldom enough that the usual signs are what is drilled.
const shares = { unclear: 0.08, two: 0.12, open: 0.4 };

// The signal drill: a sign is shown for a moment, the reader answers.
class Drill {
  constructor() {
    this.means = { ...data.means };
    this.run = 0;
    this.best = 0;
    this.meanings();
    this.answers();
    byId("drillgo").addEventListener("click", () => (this.timer ? this.stop() : this.ask()));
  }

  // Each sign has a meaning of its own: choosing one swaps it with the sign that had it.
  meanings() {
    const choose = byId("meanings");
    choose.textContent = "";
    for (const sign of ["fist", "open", "two"]) {
      const label = document.createElement("label"), select = document.createElement("select");
      label.append(data.say[sign] + " ", select);
      for (const m of ["stay", "switch", "fake"]) select.add(new Option(data.say[m], m, false, this.means[sign] === m));
      select.addEventListener("change", () => {
        const other = Object.keys(this.means).find((s) => s !== "unclear" && this.means[s] === select.value);
        this.means[other] = this.means[sign];
        this.means[sign] = select.value;
        this.meanings();
      });
      choose.append(label);
    }
  }

  answers() {
    for (const m of ["stay", "switch", "fake"]) {
      const b = document.createElement("button");
      b.type = "button";
      b.textContent = data.say[m];
      b.dataset.answer = m;
      b.addEventListener("click", () => this.answer(m));
      byId("answers").append(b);
    }
  }

  ask() {
    this.sign = null;
    this.show("");
    byId("verdict").textContent = data.say.ready;
    byId("drillgo").textContent = data.say.stop;
    sound.beep("count", 0);
    this.timer = setTimeout(() => this.give(), 900 + Math.random() * 1100);
  }

  give() {
    let left = Math.random();
    this.sign = Object.keys(shares).find((sign) => (left -= shares[sign]) < 0) || "fist";
    this.show(this.sign);
    byId("verdict").textContent = "";
    this.timer = setTimeout(() => this.show(""), 1200);
  }

  show(sign) {
    byId("sign").innerHTML = sign ? data.signs[sign] : ""; // pictures of the page's own
    byId("sign").setAttribute("aria-label", sign ? data.say[sign] : "");
  }

  answer(move) {
    if (!this.sign) return;
    clearTimeout(this.timer);
    this.show(this.sign);
    const want = this.means[this.sign], right = move === want;
    this.run = right ? this.run + 1 : 0;
    this.best = Math.max(this.best, this.run);
    byId("verdict").textContent = right ? data.say.right : data.say.wrong + " " + data.say[want];
    byId("streak").textContent = `${data.say.streak}: ${this.run} · ${data.say.best}: ${this.best}`;
    this.sign = null;
    this.timer = setTimeout(() => this.ask(), right ? 1100 : 2400);
  }

  stop() {
    clearTimeout(this.timer);
    this.timer = this.sign = null;
    this.show("");
    byId("verdict").textContent = "";
    byId("drillgo").textContent = data.say.start;
  }
}
