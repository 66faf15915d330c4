// Nothing is missing for a start. For the tests; not part of any page.
import type { Needs } from "../wire/Needs";

export const nothing: Needs = {
  sight: false,
  client_ready: false,
  stage: false,
  check: false,
  pause: false,
  desk: false,
  rest: false,
  motion: false,
  sound: false,
};
