/** Answers worked out once for each score, texture or analysis, and kept as long as that is. */

/** The same question, asked of each subject once. The answer must depend on the subject alone, which must not change. */
export function remembered<Subject extends object, Answer>(
  ask: (subject: Subject) => Answer,
): (subject: Subject) => Answer {
  const known = new WeakMap<Subject, { readonly answer: Answer }>();
  return (subject) => {
    const before = known.get(subject);
    if (before !== undefined) return before.answer;
    const answer = ask(subject);
    known.set(subject, { answer });
    return answer;
  };
}
