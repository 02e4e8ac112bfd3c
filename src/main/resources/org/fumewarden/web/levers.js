// One change at a time with what it would move, in one line each, the largest first.

import { askJson } from './server.js';
import { el } from './dom.js';
import { answerWords, question, state } from './state.js';
import { figure } from './plate.js';
import { has, say } from './words.js';
import { answered } from './steps.js';

const SHOWN = 6;
/** Questions tried in one request. */
const GROUP = 4;

function device(b) {
  return has(`device.${b.class}`) ? say(`device.${b.class}`) : b.wear || say(b.status === 'do-not-enter' ? 'wear.stay-out' : 'wear.nothing-cleared').replace(/\..*/, '');
}

/** What a change moves, in one line. */
function line(now, turn) {
  const then = turn.then;
  return [then.status !== now.status && say(`state.${then.status}.word`),
    then.factor !== now.factor && say('ui.lever.factor', figure(now.factor), figure(then.factor)),
    then.class !== now.class && say('ui.lever.wear', device(then)),
    turn.classes > 0 && say('ui.lever.classes', turn.classes),
    then.questions !== now.questions && say('ui.lever.open', now.questions, then.questions)].filter(Boolean).join('; ') || say('ui.lever.said', turn.moved);
}

let known = { task: '', turns: [], now: null, rest: null };

/** Ids of the questions to try: those answered or open, the ones with few answers first, since they come back soonest. */
function candidates() {
  const open = new Set((state.advice?.questions ?? []).map(q => q.question));
  const size = q => (q.kind === 'flag' ? 2 : q.choices.length);
  return state.vocabulary.questions.filter(q => size(q) > 0 && (open.has(q.id) || answered(q))).sort((a, b) => size(a) - size(b)).map(q => q.id);
}

/** Tries one group of questions after the other and tells after each; what is known of a task is not asked again. */
async function search(task, tell) {
  const key = JSON.stringify(task);
  if (known.task !== key) known = { task: key, turns: [], now: null, rest: candidates() };
  const own = known;
  if (own.now) tell(own);
  while (own === known && own.rest.length > 0 && tell(null)) {
    while (state.busy) await new Promise(later => { setTimeout(later, 300); });
    const told = await askJson('api/turns', { task, questions: own.rest.slice(0, GROUP) }, true);
    own.rest = own.rest.slice(GROUP);
    own.turns = [...own.turns, ...told.turns].sort((a, b) => b.classes - a.classes || b.moved - a.moved);
    own.now = told.now;
    if (own === known) tell(own);
  }
}

/** The list; it fills itself. */
export function levers(task, tried) {
  const out = el('div', {}, say('ui.working'));
  const row = now => turn => {
    const of = question(turn.question);
    return el('li', {}, el('button', { type: 'button', className: 'quiet', onclick: () => tried(turn.path, turn.value) }, `${of.ask} ${answerWords(of, turn.value)}`),
      el('span', { className: 'cite' }, ` ${line(now, turn)}`));
  };
  const section = el('section', {}, el('h3', {}, say('ui.levers')), out);
  const draw = own => {
    if (!own) return section.isConnected;
    const rest = own.turns.slice(SHOWN);
    out.replaceChildren(own.turns.length === 0 ? el('p', {}, say(own.rest.length ? 'ui.working' : 'ui.moved.none')) : el('ol', { className: 'levers' }, own.turns.slice(0, SHOWN).map(row(own.now))),
      own.rest.length > 0 && own.turns.length > 0 ? el('p', { className: 'hint' }, say('ui.working')) : '',
      rest.length ? el('details', { className: 'more' }, el('summary', {}, `${say('ui.more')} (${rest.length})`), el('ol', { className: 'levers', start: SHOWN + 1 }, rest.map(row(own.now)))) : '');
    return true;
  };
  setTimeout(() => search(task, draw).catch(() => { /* what came so far stays */ }), 0);
  return section;
}

/** The questions whose answers may be changed, by their path. */
export function changeable(task) {
  const list = Array.isArray(task.exposures) ? task.exposures : [];
  const levels = list.flatMap((e, i) => ['twa', 'stel', 'ceiling'].filter(t => e?.[t] !== undefined).map(t => ({
    id: `exposures.${i}.${t}`, path: `exposures.${i}.${t}`, kind: 'level', choices: [], translated: true,
    ask: `${state.vocabulary.names[e.agent] ?? e.agent}, ${say(`averaging.${t}`)}`,
    units: [{ unit: 'mg/m3', factor: '1', kind: 'm' }, { unit: 'ug/m3', factor: '0.001', kind: 'm' }, { unit: 'ppm', factor: '1', kind: 'v' }, { unit: 'ppb', factor: '0.001', kind: 'v' }],
  })));
  return [...levels, ...state.vocabulary.questions];
}
