/**
 * The widest spread (highest less lowest) of the window of `width` seconds that ends at each row, times ascending. The rows
 * that can still become an end are kept in two queues, so that each row is looked at twice at most.
 */
export function rollingSpread(time: Float64Array, values: Float64Array, width: number): Float64Array {
  const spread = new Float64Array(time.length);
  const highs = new Int32Array(time.length);
  const lows = new Int32Array(time.length);
  let [highFrom, highTo, lowFrom, lowTo] = [0, 0, 0, 0];
  for (let i = 0; i < time.length; i++) {
    const value = values[i] as number;
    while (highTo > highFrom && (values[highs[highTo - 1] as number] as number) <= value) highTo--;
    highs[highTo++] = i;
    while (lowTo > lowFrom && (values[lows[lowTo - 1] as number] as number) >= value) lowTo--;
    lows[lowTo++] = i;
    const start = (time[i] as number) - width;
    while ((time[highs[highFrom] as number] as number) < start) highFrom++;
    while ((time[lows[lowFrom] as number] as number) < start) lowFrom++;
    spread[i] = (values[highs[highFrom] as number] as number) - (values[lows[lowFrom] as number] as number);
  }
  return spread;
}

/** The change over the window of the straight line through its rows by least squares, over their mean. */
export function rollingTrend(time: Float64Array, values: Float64Array, width: number): Float64Array {
  const trend = new Float64Array(time.length);
  const origin = time[0] ?? 0;
  let [first, n, t, x, tt, tx] = [0, 0, 0, 0, 0, 0];
  const add = (i: number, sign: number) => {
    const at = (time[i] as number) - origin;
    const value = values[i] as number;
    n += sign;
    t += sign * at;
    x += sign * value;
    tt += sign * at * at;
    tx += sign * at * value;
  };
  for (let i = 0; i < time.length; i++) {
    add(i, 1);
    while ((time[first] as number) < (time[i] as number) - width) add(first++, -1);
    const spread = tt - (t * t) / n;
    trend[i] = n > 2 && spread > 0 ? (((tx - (t * x) / n) / spread) * width) / (x / n) : 0;
  }
  return trend;
}
