// What moved between two pieces of advice: the answer first, then classes, questions and sentences, each in one line that opens.

import { el, ruleWords } from './dom.js';
import { name, question, state } from './state.js';
import { has, say } from './words.js';
import { unverified } from './advice.js';
import { classWords, figure } from './plate.js';

/** Classes that one line names. */
const SHOWN = 5;
let own = true;
const FIRST = { status: 'plate.status', 'required factor': 'plate.factor', recommended: 'plate.wear', unit: 'plate.unit' };

function device(id) {
  if (id === 'none') return say('ui.none');
  return has(`device.${id}`) ? say(`device.${id}`) : state.advice?.respirators.find(r => r.class === id)?.name ?? classWords(id);
}

/** A value of a comparison in the words of the page. */
function words(what, value) {
  if (what === 'status') return say(`state.${value}.word`);
  if (what === 'recommended') return device(value);
  if (what === 'unit') return value === 'none' ? say('ui.none') : say(`ui.unit.${value}`);
  const factor = /^(\S+) for (\S+?)(, still open)?$/.exec(value);
  if (factor) return Number(factor[1]) > 1 ? `${figure(factor[1])} (${name(factor[2])})${factor[3] ? ` ${say('factor.open')}` : ''}` : say(factor[3] ? 'factor.none.open' : 'factor.none');
  return value;
}

function verdict(text) {
  const key = text.split(',')[0];
  return has(`verdict.${key}`) ? say(`verdict.${key}`) : say('ui.none');
}

function because(d) {
  const side = (reasons, sign, key) => reasons.map(r => el('li', {}, el('b', {}, `${sign} ${say(key)} `), ruleWords('span', r.says, undefined, own),
    el('span', { className: 'cite' }, ` ${r.rule} \u00B7 ${r.source}, ${r.clause}`), unverified(r.unverified)));
  return d.ceased.length + d.began.length === 0 ? null
    : el('ul', { className: 'plain' }, side(d.ceased, '\u2212', 'ui.ceased'), side(d.began, '+', 'ui.began'));
}

function line(head, text, inside) {
  const body = inside.filter(Boolean);
  const one = [el('b', {}, `${head}: `), text];
  return el('li', { className: 'moved' }, body.length === 0 ? one : el('details', {}, el('summary', {}, one), body));
}

function arrow(before, after) {
  return el('span', {}, el('span', { className: 'was' }, before), el('span', { 'aria-label': say('ui.becomes') }, ' \u2192 '), el('span', {}, after));
}

function shortened(ids) {
  return ids.slice(0, SHOWN).map(classWords).join(', ') + (ids.length > SHOWN ? ` (+${ids.length - SHOWN})` : '');
}

/** Classes that got the same new verdict stand in one line. */
function classes(all) {
  const groups = new Map();
  for (const d of all) {
    const to = verdict(d.after);
    if (to !== verdict(d.before)) groups.set(to, [...(groups.get(to) ?? []), d]);
  }
  return [...groups].map(([to, list]) => line(to, shortened(list.map(d => d.what.slice('respirator '.length))),
    list.map(d => el('div', {}, el('p', {}, el('b', {}, device(d.what.slice('respirator '.length))), ' ', arrow(verdict(d.before), to)), because(d)))));
}

function listed(key, all, text) {
  return all.length === 0 ? [] : [line(say(key), String(all.length), [el('ul', {}, all.map(d => el('li', {}, text(d), because(d))))])];
}

function ask(d) {
  const id = d.what.slice('question '.length);
  return question(id)?.ask ?? id.split('.').slice(1).map(name).join(', ');
}

/** One line for each thing that moved, the largest first; its sentences stand in the given language. */
export function movedLines(differences, language) {
  own = language === document.documentElement.lang;
  const of = start => differences.filter(d => d.what.startsWith(start));
  const first = differences.filter(d => d.what in FIRST);
  const known = [...first, ...of('respirator '), ...of('question '), ...of('duty ')];
  const rest = differences.filter(d => !known.includes(d));
  return [...first.map(d => line(say(FIRST[d.what]), arrow(words(d.what, d.before), words(d.what, d.after)), [because(d)])),
    ...classes(of('respirator ')),
    ...listed('ui.moved.open', of('question ').filter(d => d.after === 'open'), ask),
    ...listed('ui.moved.settled', of('question ').filter(d => d.after !== 'open'), ask),
    ...listed('ui.moved.duties', of('duty '), d => ruleWords('span', d.after === 'not due' ? say('ui.moved.gone', d.before) : d.after)),
    ...listed('ui.moved.said', rest.filter(d => d.before === 'not said'), d => ruleWords('span', d.after, undefined, own)),
    ...listed('ui.moved.unsaid', rest.filter(d => d.after === 'no longer said'), d => ruleWords('span', d.before, undefined, own))];
}
