// What may be done to an item: three large acts for its kind, and every other entry behind "more". And who is doing it.

import { el, fresh } from './dom.js';
import { remember, remembered } from './state.js';
import { say } from './words.js';

const THREE = {
  unit: ['before-use-check', 'examination', 'withdrawal'],
  mask: ['examination', 'replacement', 'withdrawal'],
  wearer: ['fit-test', 'training', 'medical'],
  filter: ['replacement', 'performed', 'withdrawal'],
  battery: ['replacement', 'repair', 'withdrawal'],
  plant: ['examination', 'repair', 'withdrawal'],
  'air-supply': ['air-test', 'repair', 'withdrawal'],
  site: ['performed', 'air-test', 'training'],
};

/** Entries that make no sense for a kind of item. */
const NEVER = {
  'before-use-check': kind => kind !== 'unit',
  'fit-test': kind => kind !== 'wearer',
  medical: kind => kind !== 'wearer',
  training: kind => !['wearer', 'site'].includes(kind),
  'air-test': kind => !['air-supply', 'site'].includes(kind),
  examination: kind => ['wearer', 'site', 'filter', 'battery'].includes(kind),
  withdrawal: kind => ['wearer', 'site'].includes(kind),
  repair: kind => ['wearer', 'site'].includes(kind),
  replacement: kind => ['wearer', 'site'].includes(kind),
};

export function three(kind) {
  return THREE[kind] ?? ['performed'];
}

export function others(kind, all) {
  return all.filter(act => !three(kind).includes(act) && !(NEVER[act]?.(kind)));
}

/** The person at this device; asked once, shown always. */
export function whoLine(changed) {
  const id = fresh('who');
  const box = el('div', { className: 'who choices' });
  const draw = editing => {
    const who = remembered('by') ?? '';
    const input = el('input', { id, type: 'text', value: who, maxLength: 80, autocomplete: 'name' });
    const done = () => {
      remember('by', input.value.trim() || null);
      draw(input.value.trim() === '');
      changed?.();
    };
    input.addEventListener('keydown', event => { if (event.key === 'Enter') { event.preventDefault(); done(); } });
    input.addEventListener('input', () => remember('by', input.value.trim() || null));
    box.replaceChildren(...(editing || who === '' ? [el('label', { htmlFor: id }, say('ui.who.ask')), input, el('button', { type: 'button', onclick: done }, say('ui.who.done'))]
      : [el('span', {}, say('ui.who.is')), el('b', { className: 'by' }, who), el('button', { type: 'button', className: 'quiet', onclick: () => { draw(true); box.querySelector('input').select(); } }, say('ui.who.change'))]));
  };
  draw(false);
  return box;
}
