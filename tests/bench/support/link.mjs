// Links, page clocks and the server's beats in virtual time. All times are room time in ms unless they are said to be page time.

/**
 * Delay each way, even within `mid` ± `jitter` (as the kernel's network emulator draws it unless told otherwise), and the
 * share of lost packets.
 */
export const LINKS = {
  near: { label: '40±10 ms', mid: 40, jitter: 10, loss: 0 },
  far: { label: '150±75 ms, 1 % lost', mid: 150, jitter: 75, loss: 0.01 },
};

/** The first beats of a socket and those of a live room: QUICK_BEATS, QUICK_BEAT_MS, LIVE_BEAT_MS of leeward_core. */
const QUICK = { count: 20, every: 50 };
export const BEAT = 250;

/**
 * How long TCP waits for an acknowledgement before it sends a packet again: RFC 6298 with the 200 ms that common kernels
 * take for its least variable part instead of the standard's whole second (from memory). The mean deviation of a round trip
 * is that of the sum of two even delays.
 */
const timeout = ({ mid, jitter }) => 2 * mid + Math.max(200, 4 * ((2 * jitter) / 3));

/** What one packet takes that is not lost. */
const drawn = ({ mid, jitter }, random) => mid + jitter * (2 * random() - 1);

/**
 * That a retransmission was lost too is found sooner than by its timeout when a later packet is acknowledged: RFC 8985, whose
 * reordering window is a quarter of the least round trip (from memory). The next packet is the next beat.
 */
const acknowledged = (link, random) => BEAT * random() + drawn(link, random) + drawn(link, random) + (link.mid - link.jitter) / 2;

/**
 * What one packet takes on a link if it is sent at `sent`: each time it is lost, one more wait for its retransmission. The
 * timeout doubles each time. While the link is `away` nothing gets through, and only timeouts are left; with
 * `timeoutsAlone` there is nothing else on any link, which no common system does any more.
 */
export function transit(link, random, sent = 0, away = () => false) {
  let at = sent;
  let wait = timeout(link);
  for (; away(at) || random() < link.loss; wait *= 2) {
    const first = at === sent;
    at += first || link.timeoutsAlone || away(at) ? wait : Math.min(wait, acknowledged(link, random));
  }
  return at - sent + drawn(link, random);
}

/** One direction of a socket: nothing arrives before what was sent before it. */
export class Lane {
  #last = -Infinity;

  /** When it arrives, of what is sent at `sent` and by itself takes `takes`. Call it in the order of sending. */
  arrival(sent, takes) {
    this.#last = Math.max(this.#last, sent + takes);
    return this.#last;
  }
}

/** A page's clock: it began at some other time than the room's and runs `skew` faster. */
export class PageClock {
  #zero;
  #speed;

  constructor(zero, skew) {
    this.#zero = zero;
    this.#speed = 1 + skew;
  }

  page(room) {
    return (room - this.#zero) * this.#speed;
  }

  room(page) {
    return page / this.#speed + this.#zero;
  }
}

/** A clock as a page may have one: up to `most` faster or slower, opened up to an hour before or after the room. */
export const anyClock = (random, most = 50e-6) => new PageClock(3_600_000 * (2 * random() - 1), most * (2 * random() - 1));

/** When the server beats, from `from` up to `until`. */
function beatTimes(from, until) {
  const times = [];
  for (let at = from; at <= until; at += times.length < QUICK.count ? QUICK.every : BEAT) times.push(at);
  return times;
}

/** One seeded run of a page's link: what each beat takes down and its answer up, by `takes()` of each direction. */
export function traceOf(until, down, up, from = 0) {
  return beatTimes(from, until).map((sent) => ({ sent, down: down(), up: up() }));
}

/**
 * What the page hears: each beat with the room times of its arrival and of the answer's, in order. A beat carries the last answer that the
 * server had when it sent it (`Line::answered` of leeward_core).
 */
export function heardBeats(trace, clock) {
  const [down, up] = [new Lane(), new Lane()];
  const exchanges = trace.map((beat, id) => {
    const arrival = down.arrival(beat.sent, beat.down);
    return { id, sent: beat.sent, arrival, heard: up.arrival(arrival, beat.up) };
  });
  let answered = 0;
  return exchanges.map(({ id, sent, arrival, heard }) => {
    while (exchanges[answered].heard <= sent) answered++;
    const last = exchanges[answered - 1];
    const echo = last ? { id: last.id, page: clock.page(last.arrival), heard: last.heard } : null;
    return { arrival, heard, beat: { id, sent, echo, desk_silent: 0, desk_trip: 0 } };
  });
}

/** Round trips that the server remembers of a line, by how much one may exceed their median, and the most of it that is borne, ms. */
const TRIPS = 15;
const USUAL = 1.5;
const MOST_TRIP = 500;

/**
 * What the server knows of a page by its answers, in order: when each was heard (`heard`), when the page was there for sure (`alive`: the
 * answer's beat was sent then), and how much of that round trip is borne (`trip`): TRIPS, USUAL and MOST_TRIP_MS of leeward_core.
 */
export function signsOf(exchanges) {
  const trips = [];
  return exchanges.map(({ sent, heard }) => {
    trips.push(heard - sent);
    if (trips.length > TRIPS) trips.shift();
    const sorted = [...trips].sort((a, b) => a - b);
    return { heard, alive: sent, trip: Math.min(heard - sent, USUAL * sorted[Math.floor(sorted.length / 2)], MOST_TRIP) };
  });
}

/** What a beat that is sent at `sent` tells the stage of the desk, if `sign` was the last one heard. */
export const toldOf = (sign, sent) => ({ desk_silent: sign === undefined ? null : sent - sign.alive, desk_trip: sign?.trip ?? 0 });
