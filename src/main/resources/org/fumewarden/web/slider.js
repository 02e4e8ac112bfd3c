// One exposure pushed from low to high, with the values at which the advice turns.

import { askJson } from './server.js';
import { el, svg, ruleWords } from './dom.js';
import { name, state } from './state.js';
import { say } from './words.js';
import { LEVEL_UNITS, plain, split } from './units.js';
import { plate } from './plate.js';

const POINTS = 41;
const SPAN = 30;

/** The exposures that can be varied, each with the value it stands at. */
function choices() {
  const list = Array.isArray(state.task.exposures) ? state.task.exposures : [];
  return list.flatMap(e => ['twa', 'stel', 'ceiling'].filter(t => e[t] !== undefined).map(t => {
    const limit = state.vocabulary.limits.find(l => l.agent === e.agent && l.averaging === t);
    const own = split(e[t] === 'unknown' ? '' : e[t], LEVEL_UNITS);
    const value = Number(own.number) || (limit ? Number(limit.value) : 1);
    const unit = own.number ? own.unit : limit?.unit ?? own.unit;
    return { path: `exposures.${e.agent}.${t}`, words: `${name(e.agent)}, ${say(`averaging.${t}`)}`, value, unit };
  }));
}

function place(value, points) {
  const low = Math.log(Number(points[0].value));
  const high = Math.log(Number(points[points.length - 1].value));
  return (Math.log(Number(value)) - low) / (high - low);
}

function ticks(found) {
  const marks = found.tipping.map(t => {
    const x = 1000 * place(t.at, found.points);
    return svg('line', { x1: x, x2: x, y1: 0, y2: 16, class: 'tick' });
  });
  return svg('svg', { viewBox: '0 0 1000 16', preserveAspectRatio: 'none', class: 'ticks', 'aria-hidden': 'true' }, marks);
}

function chart(text) {
  const drawn = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
  return el('div', { className: 'chart', tabIndex: 0, role: 'region', 'aria-label': say('ui.chart') }, document.importNode(drawn, true));
}

function turned(t) {
  return t.turned.map(d => `${d.what}: ${d.before} \u2192 ${d.after}`);
}

function result(choice, found) {
  const shown = el('div', { 'aria-live': 'polite' });
  const range = el('input', { type: 'range', min: 0, max: found.points.length - 1, step: 1, id: 'slide', oninput: move });
  let nearest = 0;
  found.points.forEach((p, i) => {
    if (Math.abs(Math.log(Number(p.value) / choice.value)) < Math.abs(Math.log(Number(found.points[nearest].value) / choice.value))) nearest = i;
  });
  range.value = nearest;
  function move() {
    const point = found.points[Number(range.value)];
    const words = `${plain(Number(point.value))} ${choice.unit}`;
    range.setAttribute('aria-valuetext', words);
    shown.replaceChildren(plate(point, words, true), el('p', {}, point.serving.length === 0 ? say('ui.serving.none') : `${say('ui.serving')} ${point.serving.join(', ')}`));
  }
  function go(t) {
    const beyond = found.points.findIndex(p => Number(p.value) > Number(t.at) || (!t.inclusive && Number(p.value) === Number(t.at)));
    range.value = beyond < 0 ? found.points.length - 1 : beyond;
    move();
    range.focus();
  }
  move();
  return [
    el('label', { className: 'stack', htmlFor: 'slide' }, choice.words),
    el('div', { className: 'track' }, range, ticks(found)),
    el('p', { className: 'ends' }, el('span', {}, `${plain(Number(found.points[0].value))} ${choice.unit}`), el('span', {}, `${plain(Number(found.points[found.points.length - 1].value))} ${choice.unit}`)),
    shown,
    el('h4', {}, say('ui.tipping')),
    found.tipping.length === 0 ? el('p', {}, say('ui.tipping.none')) : el('ol', { className: 'tipping' }, found.tipping.map(t => el('li', {},
      el('button', { type: 'button', className: 'quiet', onclick: () => go(t) }, say(t.inclusive ? 'ui.tipping.above' : 'ui.tipping.from', `${t.at} ${choice.unit}`)),
      el('details', {}, el('summary', {}, say('ui.tipping.turns', t.turned.length)), el('ul', {}, turned(t).map(words => el('li', {}, ruleWords('span', words)))))))),
    el('h4', {}, say('ui.chart')), chart(found.chart)];
}

export function slider() {
  const offered = choices();
  const out = el('div', {});
  if (offered.length === 0) return el('p', {}, say('ui.slider.none'));
  const choose = el('select', { id: 'vary' }, offered.map((c, i) => el('option', { value: i, lang: 'en' }, c.words)));
  const button = el('button', { type: 'button', onclick: async () => {
    const choice = offered[Number(choose.value)];
    button.disabled = true;
    out.replaceChildren(el('p', { role: 'status' }, say('ui.working')));
    try {
      const found = await askJson('api/sweep', { task: state.task, path: choice.path, unit: choice.unit, axis: choice.words,
        from: plain(choice.value / SPAN), to: plain(choice.value * SPAN), points: POINTS });
      out.replaceChildren(...result(choice, found));
    } catch (fault) {
      out.replaceChildren(...(fault.problems ?? []).map(p => el('p', { className: 'fault' }, `${p.message} ${say('ui.maybe', p.maybe)}`)));
    } finally {
      button.disabled = false;
    }
  } }, say('ui.slider.run'));
  return el('div', {}, el('div', { className: 'choices' }, el('label', { htmlFor: 'vary' }, say('ui.slider.which')), choose, button), out);
}
