// Advice decided anew and compared with what was kept, and two kept files compared with each other.

import { askJson } from './server.js';
import { el, fresh, ruleWords } from './dom.js';
import { state } from './state.js';
import { say } from './words.js';
import { faultWords } from './faults.js';

function other(told) {
  return el('div', { className: 'fault-box' }, el('p', {}, `\u2715 ${say('ui.replay.other', told.place ?? '')}`),
    told.place !== undefined && [el('p', {}, `${say('ui.was')} `, el('code', {}, told.then)), el('p', {}, `${say('ui.is')} `, el('code', {}, told.now))],
    !told['same-revision'] && el('p', {}, say('ui.replay.rules')),
    told.changes.length > 0 && el('details', { className: 'more' }, el('summary', {}, say('ui.replay.changes', told.changes.length)), el('ul', {}, told.changes.slice(0, 200).map(c => el('li', {}, ruleWords('span', c))))));
}

/** Shows what came of it, and says so when nothing came. */
async function shown(out, work, good) {
  out.replaceChildren(say('ui.working'));
  try {
    const told = await work();
    out.replaceChildren(told.same ? el('p', { className: 'good' }, `\u2713 ${good(told)}`) : other(told));
  } catch (fault) {
    out.replaceChildren(el('p', { className: 'fault' }, say('ui.replay.failed'), ' ', (fault.problems ?? []).map(p => (p.message.includes('no advice') ? say('ui.replay.nofile') : faultWords(p))).join(' ')));
  }
}

function file(words) {
  const id = fresh('kept-file');
  const input = el('input', { type: 'file', id, accept: '.json' });
  return { input, node: el('div', {}, el('label', { className: 'stack', htmlFor: id }, words), input) };
}

/** The box. */
export function keptBox() {
  const replayed = el('div', { role: 'status', className: 'replayed' });
  const compared = el('div', { role: 'status', className: 'compared' });
  const run = text => shown(replayed, () => askJson('api/replay', { task: state.task, advice: text }), told => say('ui.replay.same', told.steps, told.revision.slice(0, 12)));
  const one = file(say('ui.replay.file'));
  one.input.addEventListener('change', async () => one.input.files[0] && run(await one.input.files[0].text()));
  const [first, second] = [file(say('ui.kept.first')), file(say('ui.kept.second'))];
  const compare = el('button', { type: 'button', onclick: async () => {
    const texts = await Promise.all([first, second].map(f => f.input.files[0]?.text()));
    if (texts.some(t => t === undefined)) {
      compared.replaceChildren(el('p', { className: 'fault' }, say('ui.kept.both')));
      return;
    }
    await shown(compared, () => askJson('api/kept', { first: texts[0], second: texts[1] }), told => say('ui.kept.same', told.before.title));
  } }, say('ui.kept.compare'));
  return el('section', { className: 'boxed no-print' }, el('h3', {}, say('ui.replay')), el('p', { className: 'hint' }, say('ui.replay.hint')),
    el('p', { className: 'tools' }, el('button', { type: 'button', id: 'replay', onclick: () => run(state.raw) }, say('ui.replay.run'))), one.node, replayed,
    el('h4', {}, say('ui.kept.two')), first.node, second.node, el('p', { className: 'tools' }, compare), compared);
}
