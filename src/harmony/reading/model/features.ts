/** A list of features that hold of something: indices into the weights, in an array used again and again. */
export interface FeatureList {
  readonly indices: Int32Array;
  count: number;
}

export function featureList(room: number): FeatureList {
  return { indices: new Int32Array(room), count: 0 };
}

/** What the features listed are worth together, in the order listed; the list is empty afterwards. */
export function worthOf(list: FeatureList, weights: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < list.count; i++) sum += weights[list.indices[i]!]!;
  list.count = 0;
  return sum;
}
