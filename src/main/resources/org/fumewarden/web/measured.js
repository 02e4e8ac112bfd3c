// How a level was found: samples, stretches of a shift, an estimate of the room, or a judgement.

import { el, fresh } from './dom.js';
import { state } from './state.js';
import { has, say } from './words.js';

/** A sample as a line: a level, or what else is known about it, as JSON. */
function sampleLine(sample) {
  return typeof sample === 'string' ? sample : JSON.stringify(sample);
}

function sampleOf(line) {
  if (!line.startsWith('{')) return line;
  try {
    return JSON.parse(line);
  } catch {
    return line;
  }
}

/** A stretch as a line: level, a semicolon, how long. */
function periodLine(period) {
  return `${period?.level ?? ''}; ${period?.duration ?? ''}`;
}

function periodOf(line) {
  const [level, duration] = line.split(';').map(p => p.trim());
  return { level: level ?? '', duration: duration ?? '' };
}

function lines(text, of) {
  const list = text.split('\n').map(s => s.trim()).filter(Boolean).map(of);
  return list.length ? list : undefined;
}

function area(words, value, placeholder, taken) {
  const box = el('textarea', { rows: 3, value, placeholder, maxLength: 4000, oninput: () => taken(box.value) });
  return el('label', { className: 'stack' }, words, box);
}

function choice(words, options, value, taken) {
  const id = fresh('choice');
  return el('p', { className: 'choices' }, el('label', { htmlFor: id }, words), el('select', { id, onchange: e => taken(e.target.value || undefined) },
    el('option', { value: '' }, say('ui.exposure.usual')), options.map(([key, name]) => el('option', { value: key, selected: key === value }, name))));
}

function fault(index, cell) {
  return el('p', { className: 'fault', 'data-path': `exposures.${index}.${cell}` });
}

/** A judgement counts with a person, what it rests on, and a day. */
function judgement(entry, changed) {
  const judged = el('input', { type: 'checkbox', checked: Boolean(entry.judged), onchange: () => {
    changed('judged', judged.checked ? far.value : undefined);
    rest.hidden = !judged.checked;
  } });
  const far = el('select', { onchange: () => changed('judged', far.value) }, state.vocabulary.bounds.map(b => el('option', { value: b, selected: b === entry.judged }, say(`bound.${b}`))));
  const box = (cell, words, type) => el('label', { className: 'stack' }, words, ' ', el('input', { type, value: entry[cell] ?? '', maxLength: 200, oninput: e => changed(cell, e.target.value.trim() || undefined) }));
  const rest = el('div', { hidden: !judged.checked }, el('label', { className: 'stack' }, say('ui.exposure.bound'), ' ', far), box('by', say('ui.exposure.by'), 'text'),
    choice(say('ui.exposure.basis'), state.vocabulary.bases.map(b => [b.id, has(`basis.${b.id}`) ? say(`basis.${b.id}`) : b.name]), entry.basis, value => changed('basis', value)),
    box('on', say('ui.exposure.on'), 'date'), box('because', say('ui.exposure.because'), 'text'));
  return [el('label', { className: 'choice' }, judged, el('span', {}, say('ui.exposure.judged'))), rest];
}

/** The folded part of an agent's card. */
export function measured(entry, index, changed) {
  const open = ['samples', 'periods', 'estimate', 'estimated'].some(cell => entry[cell]);
  const estimate = el('input', { type: 'checkbox', checked: entry.estimate === 'room-model', onchange: () => changed('estimate', estimate.checked ? 'room-model' : undefined) });
  const error = el('input', { type: 'text', className: 'amount', value: entry.error ?? '', maxLength: 20, placeholder: '23 %', oninput: () => changed('error', error.value.trim() || undefined) });
  const told = entry.judged && el('p', {}, say('ui.exposure.told', entry.by ?? '?', entry.on ?? '?'));
  return el('div', {}, told, el('details', { open, className: 'more' }, el('summary', {}, say('ui.exposure.more')),
    area(say('ui.exposure.samples'), (entry.samples ?? []).map(sampleLine).join('\n'), '0.004 mg/m3', text => changed('samples', lines(text, sampleOf))), fault(index, 'samples'),
    choice(say('ui.exposure.statistic'), state.vocabulary.statistics.map(s => [s, say(`statistic.${s}`)]), entry.statistic, value => changed('statistic', value)), fault(index, 'statistic'),
    area(say('ui.exposure.periods'), (entry.periods ?? []).map(periodLine).join('\n'), '0.2 mg/m3; 2 h', text => changed('periods', lines(text, periodOf))), fault(index, 'periods'),
    choice(say('ui.exposure.unsampled'), state.vocabulary.unsampled.map(u => [u, say(`unsampled.${u}`)]), entry.unsampled, value => changed('unsampled', value)), fault(index, 'unsampled'),
    el('label', { className: 'stack' }, say('ui.exposure.error'), ' ', error), fault(index, 'error'),
    el('label', { className: 'choice' }, estimate, el('span', {}, say('ui.exposure.estimate'))), fault(index, 'estimate'),
    judgement(entry, changed), fault(index, 'judged')));
}
