// Advice names clauses, facts and steps once; here each sentence and each step gets back what it names.

const REASONS = new Set(['reasons', 'conditions', 'stops', 'controls-first', 'hazards', 'filters', 'cautions', 'conflicts', 'interim']);
const WEAKEST_LAST = ['cross-checked', 'read', 'derived', 'practice', 'memory'];

const weakest = all => all.reduce((a, b) => (WEAKEST_LAST.indexOf(b) > WEAKEST_LAST.indexOf(a) ? b : a));
const capital = text => text.charAt(0).toUpperCase() + text.slice(1);

/** A form with its places filled: numbers by what follows, words by names. */
const filled = (form, told, names) => form.replace(/\{([A-Za-z]*)(\d*)\}/g, (place, word, number) => {
  if (!word) return told[number - 1];
  const name = names(word.toLowerCase(), number);
  return word.charAt(0) === word.charAt(0).toUpperCase() ? capital(name) : name;
});

function clauses(sources) {
  const all = new Map();
  for (const [source, editions] of Object.entries(sources)) {
    for (const [edition, known] of Object.entries(editions)) {
      for (const [confidence, ids] of Object.entries(known)) {
        for (const [id, clause] of Object.entries(ids)) all.set(id, { source, clause, edition, confidence });
      }
    }
  }
  return all;
}

function facts(trail, cited, name) {
  return new Map(trail.facts.flatMap(group => Object.entries(group.facts).map(([id, told]) => {
    const [at, ...rest] = [told].flat();
    const by = group.by ?? (group.table && rest.shift());
    return [id, { kind: group.kind, address: (group.table ? `${group.table}#` : '') + at, ...cited.get(by),
      words: filled(group.words, rest, (word, part) => name(at.split('/')[part - 1])) }];
  })));
}

function steps(trail, name) {
  const cited = clauses(trail.sources);
  const known = facts(trail, cited, name);
  return trail.steps.flatMap(group => Object.entries(group.steps).map(([id, told]) => {
    const [first, ...rest] = [told].flat();
    const [subject, ...own] = first.split(' ');
    const premises = [...(group.from?.split(' ') ?? []), ...own].map(from => {
      const fact = known.get(from);
      if (!fact) return { kind: 'step', address: from };
      return { ...fact, address: fact.address.replaceAll('{subject}', subject).replaceAll('{about}', subject.replace(/^[^-]*-?/, '')), words: fact.words === '{subject}' && fact.source ? name(subject) : fact.words };
    }).sort((a, b) => a.kind.localeCompare(b.kind));
    return { id, rule: group.rule, phase: group.rule.split('-').at(-2).toLowerCase(), says: filled(group.says, rest, () => name(subject)), subject,
      ...cited.get(group.by), premises, 'overridden-by': group['overridden-by']?.[id],
      'overall-confidence': weakest([cited.get(group.by).confidence, ...premises.map(p => p.confidence).filter(Boolean)]) };
  }));
}

/** What the parts leave out because their step says it, or there is none. */
function parts(whole, byId, name, cited) {
  for (const a of whole.accounts) Object.assign(a, { unit: '', ...a, name: name(a.agent), confidence: byId.get(a.step)['overall-confidence'] });
  for (const r of whole.respirators) Object.assign(r, { factor: null, filter: '', reasons: [], conditions: [], ...r, name: name(r.class) });
  for (const c of whole.checks) Object.assign(c, { what: byId.get(c.step).says, record: false, fields: [], keep: 'not stated', ...cited.get(c.by), ...c });
}

/** The advice with every reference opened, its sentences in the language of the page where they are known in it. */
export function opened(advice, said) {
  const name = id => advice.names[id] ?? id.replaceAll('-', ' ');
  const told = (step, p) => said?.facts[step.id]?.[`${p.kind} ${p.address}`];
  const all = steps(advice.trail, name).map(step => ({ ...step, own: Boolean(said?.steps[step.id]), says: said?.steps[step.id] ?? step.says,
    premises: step.premises.map(p => ({ ...p, own: Boolean(told(step, p)), words: told(step, p) ?? p.words })) }));
  const byId = new Map(all.map(s => [s.id, s]));
  const reason = id => {
    const { rule, subject, says, own, source, clause, edition, 'overall-confidence': confidence } = byId.get(id);
    return { step: id, rule, subject, says, own, source, clause, edition, confidence, unverified: confidence === 'memory' };
  };
  const open = (value, key) => {
    if (Array.isArray(value)) return REASONS.has(key) ? value.map(reason) : value.map(v => open(v));
    if (value === null || typeof value !== 'object') return value;
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, k === 'trail' ? { steps: all } : open(v, k)]));
  };
  const whole = open(advice);
  parts(whole, byId, name, clauses(advice.trail.sources));
  for (const q of whole.questions) q.ask = said?.questions[q.question] ?? q.ask;
  for (const r of whole.respirators) r.name = said?.classes[r.class] ?? r.name;
  return whole;
}
