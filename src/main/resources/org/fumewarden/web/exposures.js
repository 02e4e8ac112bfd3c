// What was measured: one card an agent, each averaging time with its unit, its limit and "unknown".

import { el, fresh, ruleWords } from './dom.js';
import { name, nameLanguage, state } from './state.js';
import { say } from './words.js';
import { LEVEL_UNITS } from './units.js';
import { amount } from './field.js';
import { measured } from './measured.js';

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
      limit && el('span', { className: 'limit' }, say('ui.limit', `${limit.value} ${limit.unit}`), limit.unverified && ` \u25B3 ${say('sheet.unverified')}`)),
    el('div', { className: 'answer' }, el('div', { className: 'choices' }, number.node,
      el('label', { className: 'choice' }, unknown, el('span', {}, say('ui.unknown')))), fault));
  return { node, fault };
}

/** The list of exposures of the task being described. */
export function exposures(onChange) {
  const list = el('div', {});
  const suggestions = el('div', { className: 'suggestions' });
  const reasons = el('div', {});
  const choose = el('select', { 'aria-label': say('ui.exposure.which') });
  let rows = [];

  function entries() {
    return Array.isArray(state.task.exposures) ? state.task.exposures : [];
  }
  function store(next) {
    onChange(next.length ? next : undefined);
  }
  function add(agent) {
    const time = TIMES.find(t => (state.advice?.questions ?? []).some(q => q.question === `exposures.${agent}.${t}`))
      ?? TIMES.find(t => limits(agent, t).length > 0) ?? 'twa';
    store([...entries(), { agent, [time]: 'unknown' }]);
    draw();
    list.querySelector('fieldset:last-of-type input')?.focus();
  }
  function card(entry, index) {
    const changed = (cell, value) => {
      const next = { ...entries()[index] };
      if (value === undefined) delete next[cell];
      else next[cell] = value;
      store(entries().map((e, i) => (i === index ? next : e)));
    };
    const asked = TIMES.filter(t => entry[t] !== undefined || limits(entry.agent, t).length > 0);
    const shown = asked.length ? asked : ['twa'];
    const levels = shown.map(t => levelRow(entry, index, t, changed));
    rows.push(...levels);
    return el('fieldset', { className: 'agent', 'data-path': `exposures.${index}` },
      el('legend', { lang: nameLanguage(entry.agent) }, name(entry.agent ?? '?')),
      levels.map(l => l.node), measured(entry, index, changed),
      el('button', { type: 'button', className: 'quiet', onclick: () => {
        store(entries().filter((e, i) => i !== index));
        draw();
        choose.focus();
      } }, say('ui.exposure.remove', name(entry.agent ?? '?'))));
  }
  function draw() {
    rows = [];
    list.replaceChildren(...entries().map(card));
    const taken = new Set(entries().map(e => e.agent));
    choose.replaceChildren(...state.vocabulary.agents.filter(a => !taken.has(a.id)).map(a => el('option', { value: a.id, lang: nameLanguage(a.id) }, a.name)));
    suggest();
  }
  function suggest() {
    const taken = new Set(entries().map(e => e.agent));
    const known = new Set(state.vocabulary.agents.map(a => a.id));
    const open = (state.advice?.questions ?? []).map(q => q.question.split('.')).filter(p => p[0] === 'exposures').map(p => p[1]);
    const found = [...new Set([...open, ...(state.advice?.hazards ?? []).map(h => h.subject)])].filter(a => known.has(a) && !taken.has(a));
    suggestions.replaceChildren(...(found.length === 0 ? [] : [el('span', {}, say('ui.exposure.expected')), ' ',
      ...found.map(a => el('button', { type: 'button', className: 'quiet', lang: nameLanguage(a), onclick: () => add(a) }, `+ ${name(a)}`))]));
    const asked = (state.advice?.questions ?? []).filter(q => q.question.startsWith('exposures.'));
    reasons.replaceChildren(...asked.map(q => el('p', { className: 'asked' }, el('span', { className: 'tag' }, say('ui.needed')), ' ',
      ruleWords('span', q.ask), q.reasons[0] && el('span', { className: 'cite' }, ` ${q.reasons[0].rule} ${q.reasons[0].source}, ${q.reasons[0].clause}`))));
  }
  draw();
  const node = el('fieldset', { className: 'group', 'data-path': 'exposures' }, el('legend', {}, say('group.exposures')),
    el('p', { className: 'hint' }, say('ui.exposure.hint')), reasons, suggestions, list,
    el('div', { className: 'choices' }, choose, el('button', { type: 'button', onclick: () => choose.value && add(choose.value) }, say('ui.exposure.add'))));
  return { node, draw, suggest };
}
