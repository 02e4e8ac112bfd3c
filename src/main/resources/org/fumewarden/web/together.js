// Several plain answers on one press: each stands in words above the button, and counts only because somebody presses it.

import { el } from './dom.js';
import { answerWords, at, changeAll, emit, state } from './state.js';
import { say } from './words.js';

/** The answers of ordinary work. Dry air holds 20.9 % of oxygen by volume (ISO 2533, standard atmosphere: 20.948 %). */
const PLAIN = { purpose: 'work', oxygen: '20.9 %', explosive: 'false', 'immediately-dangerous': 'false', 'facial-hair': 'false', spectacles: 'false',
  'fit-tested': 'true', 'medically-cleared': 'true', trained: 'true' };
/** Elsewhere the air is measured before anybody says what it holds. */
const OPEN_PLACES = ['outdoors', 'indoors'];

function offered(questions) {
  const open = OPEN_PLACES.includes(state.task.task?.place);
  return questions.filter(q => q.id in PLAIN && at(state.task, q.path) === undefined && (open || q.group !== 'atmosphere'));
}

function statement(question) {
  return el('li', { lang: question.translated ? undefined : 'en' }, `${question.ask} `, el('b', {}, answerWords(question, PLAIN[question.id])));
}

/** The box over the questions of a step; empty when fewer than two of them have a plain answer left to give. */
export function together(questions, done, undone) {
  const these = offered(questions);
  if (these.length < 2) return null;
  const give = () => {
    changeAll(these.map(q => [q.path, PLAIN[q.id]]));
    state.undo = { words: say('ui.undo.together', these.length), run: () => { changeAll(these.filter(q => at(state.task, q.path) === PLAIN[q.id]).map(q => [q.path, undefined])); undone(); } };
    emit('undo');
    done();
  };
  return el('section', { className: 'together', 'aria-label': say('ui.together') }, el('p', {}, say('ui.together')), el('ul', {}, these.map(statement)),
    el('p', { className: 'choices' }, el('button', { type: 'button', onclick: give }, say('ui.together.all')), el('span', { className: 'hint' }, say('ui.together.else'))));
}
