// Advice names facts and steps once; here each sentence and each step gets back what it names.

const REASONS = new Set(['reasons', 'conditions', 'stops', 'controls-first', 'hazards', 'filters', 'cautions', 'conflicts', 'interim']);
const WEAKEST_LAST = ['cross-checked', 'read', 'derived', 'practice', 'memory'];

const weakest = all => all.reduce((a, b) => (WEAKEST_LAST.indexOf(b) > WEAKEST_LAST.indexOf(a) ? b : a));

function cited(group, trail) {
  return group.source === undefined ? {} : { source: group.source, clause: group.clause,
    edition: group.edition ?? trail.editions[group.source], confidence: group.confidence };
}

function steps(trail) {
  const facts = new Map(trail.facts.flatMap(group => Object.entries(group.facts).map(([id, fact]) => [id, { kind: group.kind, words: fact.words,
    address: (group.table ? `${group.table}#` : '') + fact.at, ...cited(group, trail) }])));
  return trail.steps.flatMap(group => Object.entries(group.steps).map(([id, step]) => {
    const premises = step.from.map(from => (facts.has(from)
      ? { ...facts.get(from), address: facts.get(from).address.replaceAll('{subject}', step.of) } : { kind: 'step', address: from }));
    return { id, rule: group.rule, phase: group.rule.split('-').at(-2).toLowerCase(), says: group.says, subject: step.of, ...step, ...cited(group, trail), premises,
      'overall-confidence': weakest([group.confidence, ...premises.map(p => p.confidence).filter(Boolean)]) };
  }));
}

/** The advice with every reference opened, its sentences in the language of the page where they are known in it. */
export function opened(advice, said) {
  const all = steps(advice.trail).map(step => ({ ...step, own: Boolean(said?.steps[step.id]), says: said?.steps[step.id] ?? step.says }));
  const byId = new Map(all.map(s => [s.id, s]));
  const reason = id => {
    const { rule, subject, says, own, source, clause, edition, 'overall-confidence': confidence } = byId.get(id);
    return { step: id, rule, subject, says, own, source, clause, edition, confidence, unverified: confidence === 'memory' };
  };
  const open = (value, name) => {
    if (Array.isArray(value)) return REASONS.has(name) ? value.map(reason) : value.map(v => open(v));
    if (value === null || typeof value !== 'object') return value;
    return Object.fromEntries(Object.entries(value).map(([key, v]) => [key, key === 'trail' ? { steps: all } : open(v, key)]));
  };
  const whole = open(advice);
  for (const q of whole.questions) q.ask = said?.questions[q.question] ?? q.ask;
  for (const r of whole.respirators) r.name = said?.classes[r.class] ?? r.name;
  return whole;
}
