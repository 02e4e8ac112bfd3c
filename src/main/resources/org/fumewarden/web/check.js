// The check before use in three taps: all passed, or which did not, then write it.

import { el, fresh } from './dom.js';
import { say } from './words.js';

function point(check, changed) {
  const id = fresh('point');
  const box = el('input', { type: 'checkbox', id, onchange: changed });
  return { check, box, node: el('label', { className: 'choice point', htmlFor: id }, box, el('span', {}, check.name,
    check.unverified && ` \u25B3 ${say('sheet.unverified')}`)) };
}

/** The form. Calls back with the values of the entry. */
export function checkForm(item, write) {
  const points = item.checks.map(c => point(c, draw));
  const ticked = { all: false };
  const flowId = fresh('flow');
  const remarkId = fresh('remark');
  const flow = el('input', { id: flowId, type: 'text', inputMode: 'decimal', className: 'amount', maxLength: 12 });
  const remarks = el('input', { id: remarkId, type: 'text', maxLength: 500 });
  const passed = el('button', { type: 'button', className: 'large', 'aria-pressed': 'false', onclick: () => { ticked.all = true; points.forEach(p => { p.box.checked = false; }); draw(); } }, `\u2713 ${say('ui.check.all')}`);
  const send = el('button', { type: 'button', className: 'large', onclick: () => write({
    result: points.some(p => p.box.checked) ? 'failed' : 'passed',
    points: points.map(p => `${p.check.id}: ${p.box.checked ? 'failed' : 'passed'}`).join('; '),
    flow: flow.value.trim().replace(',', '.'), remarks: remarks.value.trim(),
  }) }, '');
  function draw() {
    const failed = points.filter(p => p.box.checked).length;
    if (failed > 0) ticked.all = true;
    passed.setAttribute('aria-pressed', String(ticked.all && failed === 0));
    send.disabled = !ticked.all;
    send.textContent = failed > 0 ? say('ui.check.write.failed', failed) : say('ui.check.write.passed');
    send.classList.toggle('stop', failed > 0);
  }
  draw();
  return el('div', { className: 'check' }, el('p', {}, say('ui.check.fails')), passed,
    el('fieldset', { className: 'group' }, el('legend', {}, say('ui.check.except')), points.map(p => p.node)),
    el('p', { className: 'choices' }, el('label', { htmlFor: flowId }, `${say('entry.flow')}, L/min`), flow, item['minimum-flow'] && el('span', { className: 'cite' }, say('ui.check.minimum', item['minimum-flow']))),
    el('p', { className: 'choices' }, el('label', { htmlFor: remarkId }, say('entry.remarks')), remarks), send);
}
