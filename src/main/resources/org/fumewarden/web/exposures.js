// What was measured: one card an agent, each averaging time with its unit, its limit and "unknown".

import { el, fresh, invalid } from './dom.js';
import { name, nameLanguage, state } from './state.js';
import { numeral, say } from './words.js';
import { LEVEL_UNITS } from './units.js';
import { amount } from './field.js';
import { faultNodes, faultWords } from './faults.js';
import { picker } from './picker.js';
import { measured } from './measured.js';
import { judgement } from './judged.js';
import { openAgents } from './steps.js';

const TIMES = ['twa', 'stel', 'ceiling'];

function limits(agent, time) {
  return state.vocabulary.limits.filter(l => l.agent === agent && l.averaging === time);
}

function levelRow(entry, index, time, changed) {
  const id = fresh('level');
  const faultId = fresh('fault');
  const words = `${name(entry.agent)}, ${say(`averaging.${time}`)}`;
  const fault = el('p', { className: 'fault', id: faultId });
  const unknown = el('input', { type: 'checkbox', checked: entry[time] === 'unknown', onchange: () => {
    if (unknown.checked) number.clear();
    changed(time, unknown.checked ? 'unknown' : undefined);
  } });
  const units = [...LEVEL_UNITS];
  const limit = limits(entry.agent, time)[0];
  if (limit && !entry[time]) units.sort((a, b) => Number(b.unit === limit.unit) - Number(a.unit === limit.unit));
  const number = amount({ id, words, describedBy: faultId }, entry[time], units, value => {
    unknown.checked = false;
    changed(time, value);
  });
  const node = el('div', { className: 'row level', 'data-path': `exposures.${index}.${time}` },
    el('div', { className: 'ask' }, el('span', { id, 'aria-label': words }, say(`averaging.${time}`)),
      limit && el('span', { className: 'limit' }, say('ui.limit', `${numeral(limit.value)} ${limit.unit}`), limit.unverified && ` \u25B3 ${say('sheet.unverified')}`)),
    el('div', { className: 'answer' }, el('div', { className: 'choices' }, number.node,
      el('label', { className: 'choice' }, unknown, el('span', {}, say('ui.unknown')))), fault));
  const setFault = problem => {
    fault.replaceChildren(...(problem ? faultNodes(problem, number.set) : []).filter(Boolean));
    node.classList.toggle('wrong', Boolean(problem));
    invalid(number.input, Boolean(problem));
  };
  return { node, path: `exposures.${index}.${time}`, words, setFault };
}

/** An entry with a judgement in place of the levels that nobody knew. */
function judged(entry, cells) {
  return { ...Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== 'unknown')), ...cells };
}

/** The list of exposures of the task being described; goes onward after one judgement of several. */
export function exposures(onChange, onward) {
  const list = el('div', {});
  const suggestions = el('div', { className: 'suggestions' });
  const needed = el('div', {});
  const judging = judgement((agents, cells) => {
    store([...entries().map(e => (agents.includes(e.agent) ? judged(e, cells) : e)), ...agents.filter(a => !entries().some(e => e.agent === a)).map(agent => ({ agent, ...cells }))]);
    onward();
  });
  const choose = el('div', {});
  let rows = [];

  function entries() {
    return Array.isArray(state.task.exposures) ? state.task.exposures : [];
  }
  function store(next) {
    onChange(next.length ? next : undefined);
  }
  /** To the field that takes the level of an agent; it is made when there is none yet. */
  function add(agent) {
    const times = openAgents().get(agent) ?? [];
    const time = TIMES.find(t => times.includes(t)) ?? TIMES.find(t => limits(agent, t).length > 0) ?? 'twa';
    if (!entries().some(e => e.agent === agent)) store([...entries(), { agent, [time]: 'unknown' }]);
    draw();
    list.querySelector(`[data-path="exposures.${entries().findIndex(e => e.agent === agent)}.${time}"] input`)?.focus();
  }
  function card(entry, index) {
    const changed = (cell, value) => {
      const next = { ...entries()[index] };
      if (value === undefined) delete next[cell];
      else next[cell] = value;
      store(entries().map((e, i) => (i === index ? next : e)));
    };
    const open = openAgents().get(entry.agent) ?? [];
    const asked = TIMES.filter(t => entry[t] !== undefined || open.includes(t) || limits(entry.agent, t).length > 0);
    const shown = asked.length ? asked : ['twa'];
    const levels = shown.map(t => levelRow(entry, index, t, changed));
    rows.push(...levels);
    return el('fieldset', { className: 'agent', 'data-path': `exposures.${index}` },
      el('legend', { lang: nameLanguage(entry.agent) }, name(entry.agent ?? '?')),
      levels.map(l => l.node), measured(entry, index, changed),
      el('button', { type: 'button', className: 'quiet', onclick: () => {
        store(entries().filter((e, i) => i !== index));
        draw();
        choose.querySelector('input')?.focus();
      } }, say('ui.exposure.remove', name(entry.agent ?? '?'))));
  }
  function draw() {
    rows = [];
    list.replaceChildren(...entries().map(card));
    const taken = new Set(entries().map(e => e.agent));
    const label = el('span', { id: fresh('which') }, say('ui.exposure.which'));
    const offered = state.vocabulary.agents.filter(a => !taken.has(a.id)).map(a => ({ ...a, lang: nameLanguage(a.id) }));
    choose.replaceChildren(label, picker({ id: label.id, words: say('ui.exposure.which') }, offered, undefined, 'agent', id => offered.some(a => a.id === id) && add(id)).node);
    suggest();
  }
  function suggest() {
    const taken = new Set(entries().map(e => e.agent));
    const known = new Set(state.vocabulary.agents.map(a => a.id));
    const open = openAgents();
    const found = [...new Set((state.advice?.hazards ?? []).map(h => h.subject))].filter(a => known.has(a) && !taken.has(a) && !open.has(a));
    suggestions.replaceChildren(...(found.length === 0 ? [] : [el('span', {}, say('ui.exposure.expected')), ' ',
      ...found.map(a => el('button', { type: 'button', className: 'quiet', lang: nameLanguage(a), onclick: () => add(a) }, `+ ${name(a)}`))]));
    const lines = [...open].map(([agent, times]) => el('li', {}, el('span', { className: 'tag' }, say('ui.needed')), ' ',
      el('button', { type: 'button', className: 'quiet', lang: nameLanguage(agent), onclick: () => add(agent) }, name(agent)),
      el('span', { className: 'cite' }, ` ${times.map(t => say(`averaging.${t}`)).join(', ')}`)));
    needed.replaceChildren(...(lines.length === 0 ? [] : [el('p', {}, say('ui.exposure.needed')), el('ul', { className: 'plain needs' }, lines)]));
    judging.of([...open.keys()].filter(a => !entries().some(e => e.agent === a && e.judged)));
  }
  /** Faults beside what they are about; those of the folded part stand in it. */
  function setFaults(problems) {
    for (const r of rows) r.setFault(problems.find(p => p.field === r.path));
    for (const place of list.querySelectorAll('p.fault[data-path]')) {
      const found = problems.find(p => p.field === place.dataset.path || p.field.startsWith(`${place.dataset.path}.`));
      place.textContent = found ? faultWords(found) : '';
      if (found) place.closest('details')?.setAttribute('open', '');
    }
  }
  draw();
  const node = el('div', { 'data-path': 'exposures' }, el('p', { className: 'hint' }, say('ui.exposure.hint')), needed, suggestions, list, judging.node,
    el('details', { className: 'more', open: entries().length === 0 && undefined }, el('summary', {}, say('ui.exposure.add')), choose));
  return { node, draw, suggest, setFaults };
}
