// A page's clock once more, from the beats that the page heard at the times at which it heard them (witness.mjs): the pages let nobody
// read their clocks, and this is the same code on the same figures.

/** How finely the clock is read, ms. */
const READ = 10;

/** Room time less the machine's, ms, by a page whose link has next to no delay. The room counts by the machine's monotonic clock too, so it stays that. */
export function roomZero({ origin, lines }, RoomClock) {
  const { beats } = lines.at(-1);
  const clock = new RoomClock();
  for (const { page, beat } of beats) clock.onBeat(beat, page);
  const { page } = beats.at(-1);
  return { zero: clock.roomTime(page) - page - origin, bound: clock.bound(page) };
}

/** How long after its socket opened the page's clock came within `near` ms of the room's time, and stayed there for the rest of `watched`, ms. */
export function lockedAfter({ origin, lines }, zero, { near, watched }, RoomClock) {
  const { opened, beats } = lines.at(-1);
  const clock = new RoomClock();
  let [next, locked] = [0, opened];
  for (let at = opened; at <= opened + watched; at += READ) {
    for (; next < beats.length && beats[next].page <= at; next++) clock.onBeat(beats[next].beat, beats[next].page);
    // Put so that a clock that is not known yet counts as wrong.
    if (!(Math.abs(clock.roomTime(at) - at - origin - zero) <= near)) locked = at + READ;
  }
  return locked - opened;
}

/** The room's time, ms, by the clock of a page on which a set runs since page time `begun`, at each of `times`, page times in order, ms. */
export function roomTimes({ lines }, begun, times, RoomClock) {
  const { beats } = lines.at(-1);
  const clock = new RoomClock();
  let next = 0;
  const hear = (until) => { for (; next < beats.length && beats[next].page <= until; next++) clock.onBeat(beats[next].beat, beats[next].page); };
  hear(begun);
  // Its corrections are slewed from then on.
  clock.hold(true, begun);
  return times.map((at) => {
    hear(at);
    return clock.roomTime(at);
  });
}
