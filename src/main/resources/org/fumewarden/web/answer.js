// The answer beside the description: a plate at the side of a desk, a bar on a phone; those who listen hear state and factor.

import { el, ruleWords } from './dom.js';
import { state } from './state.js';
import { say } from './words.js';
import { brief, factorWords, plate, stateWords } from './plate.js';

let box = null;
let heard = null;
let deciding = null;

/** The box; made with the frame of the page. */
export function answerBox() {
  box = el('div', { className: 'answer-now' });
  deciding = el('p', { className: 'deciding' });
  heard = el('p', { className: 'unseen', role: 'status', id: 'heard' });
  return el('aside', { 'aria-label': say('sheet.answer'), className: 'beside' }, heard, deciding, box);
}

/** Says that the answer in view is an old one; it keeps its place until the new one is here. */
export function markAnswer(words) {
  deciding.textContent = words;
}

/** Why nobody may start, and else what holds until every question is answered. */
function interim(advice) {
  return (advice.stops.length > 0 ? advice.stops : advice.interim ?? []).map(r => ruleWords('p', r.says, 'interim', r.own));
}

/** Draws the answer as it stands. */
export function drawAnswer() {
  const advice = state.advice;
  if (!advice) {
    const words = state.problems.length ? say('ui.advice.wrong') : say('ui.deciding.first');
    box.replaceChildren(el('p', { className: 'plate small' }, words));
    heard.textContent = words;
    return;
  }
  const b = brief(advice);
  box.replaceChildren(el('p', { className: `line ${b.status}` }, el('strong', { className: 'word' }, say(`state.${b.status}.word`)), el('span', { className: 'unseen' }, ` ${say('plate.factor')}`), ' ', el('b', {}, factorWords(b).replace(/\..*/, ''))),
    plate(b, say('sheet.answer'), true), ...interim(advice));
  const words = `${stateWords(b)} ${factorWords(b)}`;
  if (heard.textContent !== words) heard.textContent = words;
}
