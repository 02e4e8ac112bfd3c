// Advice decided anew and compared with what was kept, and two kept files compared with each other.

import { askJson } from './server.js';
import { el, fresh, ruleWords } from './dom.js';
import { state } from './state.js';
import { say } from './words.js';
import { faultWords } from './faults.js';
import { opened } from './open.js';
import { brief, plate } from './plate.js';
import { movedLines } from './moved.js';

/** Advice as a file holds it, by itself or inside the file of a chain. */
function adviceOf(text) {
  const file = JSON.parse(text);
  return opened(file.advice?.trail ? file.advice : file);
}

/** What two pieces of advice conclude otherwise, as a comparison on the bench tells it. */
function differences(before, after) {
  const list = [];
  const add = (what, then, now) => { if (then !== now) list.push({ what, before: then, after: now, ceased: [], began: [] }); };
  const factor = a => `${a['required-factor'].value} for ${a['required-factor'].agent}${a['required-factor'].open ? ', still open' : ''}`;
  const best = a => a.respirators.find(r => r.verdict === 'recommended')?.class ?? 'none';
  const verdict = (a, id) => a.respirators.find(r => r.class === id)?.verdict ?? 'none';
  const open = (a, id) => (a.questions.some(q => q.question === id) ? 'open' : 'settled');
  const every = (name, key) => [...new Set([...before[name], ...after[name]].map(one => one[key]))];
  add('status', before.status, after.status);
  add('required factor', factor(before), factor(after));
  add('recommended', best(before), best(after));
  for (const id of every('respirators', 'class')) add(`respirator ${id}`, verdict(before, id), verdict(after, id));
  for (const id of every('questions', 'question')) add(`question ${id}`, open(before, id), open(after, id));
  const said = a => ['stops', 'conflicts', 'controls-first', 'hazards', 'filters', 'cautions'].flatMap(part => (a[part] ?? []).map(r => r.says));
  for (const says of said(after).filter(s => !said(before).includes(s))) add('sentence', 'not said', says);
  for (const says of said(before).filter(s => !said(after).includes(s))) add('sentence', says, 'no longer said');
  return list;
}

/** Both pieces of advice as plates, and what moved between them. A file in an older form is compared by its places alone. */
function sides(texts, heads) {
  try {
    const [before, after] = texts.map(adviceOf);
    const lines = movedLines(differences(before, after), document.documentElement.lang);
    return [el('div', { className: 'pair' }, plate(brief(before), `${heads[0]}: ${before.title}`, true), plate(brief(after), `${heads[1]}: ${after.title}`, true)),
      lines.length > 0 && el('ul', { className: 'plain moves' }, lines)].filter(Boolean);
  } catch {
    return [];
  }
}

function other(told, texts, heads) {
  const both = sides(texts, heads);
  return el('div', {}, el('p', { className: 'fault' }, say('ui.replay.differs')),
    both,
    !told['same-revision'] && el('p', {}, say('ui.replay.rules')),
    el('details', { className: 'more', open: both.length < 2 }, el('summary', {}, say('ui.replay.changes', told.changes.length)), el('ul', {}, told.changes.slice(0, 200).map(c => el('li', {}, ruleWords('span', c)))),
      told.place !== undefined && el('p', {}, say('ui.replay.other', told.place), ' ', say('ui.was'), ' ', el('code', {}, told.then), ' ', say('ui.is'), ' ', el('code', {}, told.now))));
}

/** Shows what came of it, and says so when nothing came. */
async function shown(out, texts, heads, work, good) {
  out.replaceChildren(say('ui.working'));
  try {
    const told = await work();
    out.replaceChildren(told.same ? el('p', { className: 'good' }, `\u2713 ${good(told)}`) : other(told, texts, heads));
  } catch (fault) {
    out.replaceChildren(el('p', { className: 'fault' }, say('ui.replay.failed'), ' ', (fault.problems ?? []).map(faultWords).join(' ')));
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
  const run = text => shown(replayed, [text, state.raw], [say('ui.was'), say('ui.is')], () => askJson('api/replay', { task: state.task, advice: text }), told => say('ui.replay.same', told.steps, told.revision.slice(0, 12)));
  const one = file(say('ui.replay.file'));
  one.input.addEventListener('change', async () => one.input.files[0] && run(await one.input.files[0].text()));
  const [first, second] = [file(say('ui.kept.first')), file(say('ui.kept.second'))];
  const compare = el('button', { type: 'button', onclick: async () => {
    const texts = await Promise.all([first, second].map(f => f.input.files[0]?.text()));
    if (texts.some(t => t === undefined)) {
      compared.replaceChildren(el('p', { className: 'fault' }, say('ui.kept.both')));
      return;
    }
    await shown(compared, texts, [say('ui.kept.first'), say('ui.kept.second')], () => askJson('api/kept', { first: texts[0], second: texts[1] }), told => say('ui.kept.same', told.before.title));
  } }, say('ui.kept.compare'));
  return el('section', { className: 'boxed no-print' }, el('h3', {}, say('ui.replay')), el('p', { className: 'hint' }, say('ui.replay.hint')),
    el('p', { className: 'tools' }, el('button', { type: 'button', id: 'replay', onclick: () => run(state.raw) }, say('ui.replay.run'))), one.node, replayed,
    el('h4', {}, say('ui.kept.two')), first.node, second.node, el('p', { className: 'tools' }, compare), compared);
}
