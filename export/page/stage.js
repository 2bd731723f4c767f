"use strict";
// The stage: a play's drawing at a moment. Motion is straight between samples.
const data = JSON.parse(document.getElementById("data").textContent);
const byId = (id) => document.getElementById(id);

// The sample of size n in a flat list of them at or before t.
function indexAt(list, n, t) {
  let low = 0, high = list.length / n - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (list[middle * n] <= t) low = middle; else high = middle - 1;
  }
  return low;
}

// The values at t of a flat list of samples that begin with their time.
function valuesAt(list, n, t) {
  const i = indexAt(list, n, t), a = i * n, b = a + n;
  if (b >= list.length || t <= list[a]) return list.slice(a + 1, b);
  const k = (t - list[a]) / (list[b] - list[a]);
  return list.slice(a + 1, b).map((v, j) => v + (list[b + 1 + j] - v) * k);
}

class Stage {
  constructor(number) {
    this.play = data.plays[number];
    this.svg = byId("play" + number);
    this.parts = {};
    for (const g of this.svg.querySelectorAll("[data-part]")) this.parts[g.dataset.part] = g;
    const box = this.svg.viewBox.baseVal;
    this.whole = [box.x, box.y, box.width, box.height];
    this.turned = false;
    this.first = {};
    for (const p of this.play.players) this.first[p.id] = this.px(p.way.slice(1, 4));
    this.firstBall = this.play.ball.slice(1, 4);
  }

  // A place in feet and a facing, in the drawing.
  px([x, y, facing]) {
    const s = this.play.scale;
    return [s.x + x * s.foot, s.y - y * s.foot, facing];
  }

  // Where a player is: x and y in feet and the facing.
  player(id, t) {
    return valuesAt(this.play.players.find((p) => p.id === id).way, 4, t);
  }

  // Where the ball is: x, y and height in feet.
  ball(t) { return valuesAt(this.play.ball, 4, t); }

  move(name, transform) {
    if (this.parts[name]) this.parts[name].setAttribute("transform", transform);
  }

  // shown shows or hides a part.
  shown(name, on) {
    if (this.parts[name]) this.parts[name].setAttribute("visibility", on ? "visible" : "hidden");
  }

  draw(t) {
    this.t = t;
    for (const p of this.play.players) this.drawPlayer(p.id, t);
    this.drawBall(t);
    const shot = this.shotAt(t);
    this.play.shots.forEach((_, i) => { this.shown("shot" + i, i === shot); this.shown("shot" + i + "s", i === shot); });
    for (const l of this.play.lives) this.drawLive(l, t);
    this.aim(t);
  }

  drawPlayer(id, t) {
    const [x, y, facing] = this.px(this.player(id, t)), [x0, y0, facing0] = this.first[id];
    const there = `translate(${x - x0} ${y - y0})`;
    this.move(id, there + this.upright(x0, y0));
    this.move(id + "r", there);
    this.move(id + "t", `${there} rotate(${facing - facing0} ${x0} ${y0})`);
  }

  // Letters stand upright in a court that is turned.
  upright(x, y) { return this.turned ? ` rotate(180 ${x} ${y})` : ""; }

  drawBall(t) {
    const s = this.play.scale, [x, y] = this.px(this.ball(t)), z = this.ball(t)[2];
    const [x0, y0] = this.px(this.firstBall), z0 = this.firstBall[2];
    const rise = Math.min(z, s.mostFt), rise0 = Math.min(z0, s.mostFt);
    const size = (1 + s.grows * rise) / (1 + s.grows * rise0);
    this.move("ball", `translate(${x} ${y}) scale(${size}) translate(${-x0} ${-y0})`);
    const fall = s.falls * (rise - rise0);
    this.move("shadow", `translate(${x - x0 + fall} ${y - y0 + fall})`);
    this.move("high", `translate(${(z - z0) * s.foot} ${y - y0})`);
  }

  drawLive(l, t) {
    this.shown(l.part, l.from <= t && t <= l.to);
    if (!l.giver) return;
    const at = Math.max(l.from, this.play.from);
    const [x, y] = this.px(this.player(l.giver, t)), [x0, y0] = this.px(this.player(l.giver, at));
    this.move(l.part, `translate(${x - x0} ${y - y0})`);
  }

  // Shows the sign where paths cross; undefined shows none.
  warn(crossing) {
    this.play.crossings.forEach((c, i) => this.shown("cross" + i, c === crossing));
  }

  // The shot in play, -1 before the serve.
  shotAt(t) { return this.play.shots.filter((s) => s <= t).length - 1; }

  // Shows the whole court or what is round the player who is followed.
  aim(t) {
    let box = this.whole;
    if (this.followed) {
      const w = this.whole[2] * 0.55, h = this.whole[3] * 0.55;
      let [x, y] = this.px(this.player(this.followed, t));
      if (this.turned) { x = 2 * this.middle()[0] - x; y = 2 * this.middle()[1] - y; }
      const within = (v, low, size, all) => Math.min(Math.max(v - size / 2, low), low + all - size);
      box = [within(x, this.whole[0], w, this.whole[2]), within(y, this.whole[1], h, this.whole[3]), w, h];
    }
    this.svg.setAttribute("viewBox", box.join(" "));
  }

  middle() { return [this.whole[0] + this.whole[2] / 2, this.whole[1] + this.whole[3] / 2]; }

  // Turns the court so that the far team is at the bottom, letters upright.
  turn(on) {
    if (on === this.turned) return;
    this.turned = on;
    const [x, y] = this.middle();
    this.svg.querySelector(".all").setAttribute("transform", on ? `rotate(180 ${x} ${y})` : "");
    for (const g of this.svg.querySelectorAll("g[aria-label][transform*=scale]")) this.turnText(g, on);
    this.draw(this.t);
  }

  turnText(g, on) {
    if (g.closest("[data-part^=near], [data-part^=far]")) return; // turned with the player
    if (g.dataset.before === undefined) g.dataset.before = g.getAttribute("transform");
    const box = g.getBBox(), x = box.x + box.width / 2, y = box.y + box.height / 2;
    g.setAttribute("transform", g.dataset.before + (on ? ` rotate(180 ${x} ${y})` : ""));
  }
}
