//! What the end of each procedure asks for.

use serde::{Deserialize, Serialize};

use super::target::Known;
use super::{Procedure, Rehearsal, Scan};
use crate::scale::{Sud, Voc};

/// The SUD that may fit a life (EMDRIA: 0, or 1 where that fits the case).
pub(super) const FITS_AT: u8 = 1;

/// One thing that an end asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum End {
    /// SUD 0, or 1 said to fit.
    Sud,
    /// A recent event: segments, each with such a SUD.
    Segments,
    /// Gone through without disturbance.
    Rehearsal,
    /// VOC 7, or lower said to fit.
    Voc,
    /// A clear scan, with nothing disturbing since.
    Scan,
}

/// What `procedure` asks for, in the order of the work.
pub(super) const fn asked(procedure: Procedure) -> &'static [End] {
    match procedure {
        Procedure::Standard => &[End::Sud, End::Voc, End::Scan],
        Procedure::RecentEvent => &[End::Segments, End::Voc, End::Scan],
        Procedure::Future => &[End::Rehearsal, End::Voc],
        Procedure::Resource | Procedure::Restricted => &[],
    }
}

/// What is still open of it.
pub(super) fn open(known: &Known) -> Vec<End> {
    asked(known.procedure).iter().copied().filter(|end| !is_reached(*end, known)).collect()
}

fn is_reached(end: End, known: &Known) -> bool {
    let low = |sud: Sud| sud.get() == Sud::LEAST || known.sud_fits && sud.get() <= FITS_AT;
    match end {
        End::Sud => known.sud.is_some_and(low),
        End::Segments => !known.segments.is_empty() && known.segments.values().copied().all(low),
        End::Rehearsal => known.rehearsal == Some(Rehearsal::Undisturbed),
        End::Voc => known.voc.is_some_and(|voc| voc.get() == Voc::MOST || known.voc_fits),
        End::Scan => known.scan == Some(Scan::Clear),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::course::{Course, Said};
    use crate::wire::Moment;

    fn known(procedure: Procedure, said: &[Said]) -> Vec<End> {
        Course::of([Said::Procedure(procedure)].into_iter().chain(said.iter().copied())).open()
    }

    fn sud(value: u8, segment: Option<u8>) -> Said {
        Said::Sud { value: Sud::new(value).unwrap(), moment: Moment::BackAtTarget, segment }
    }

    fn voc(value: u8) -> Said {
        Said::Voc { value: Voc::new(value).unwrap(), moment: Moment::Installation }
    }

    // EMDRIA's description, in its order: distress down, belief up, body clear.
    #[test]
    fn the_standard_end_is_distress_belief_and_body() {
        let clear = Said::Scan(Scan::Clear);
        assert_eq!(known(Procedure::Standard, &[]), [End::Sud, End::Voc, End::Scan]);
        assert_eq!(known(Procedure::Standard, &[sud(0, None), voc(7), clear]), []);
        assert_eq!(known(Procedure::Standard, &[sud(1, None), voc(7), clear]), [End::Sud], "1 only where it is said to fit");
        assert_eq!(known(Procedure::Standard, &[sud(1, None), Said::SudFits, voc(7), clear]), []);
        assert_eq!(known(Procedure::Standard, &[sud(2, None), Said::SudFits, voc(7), clear]), [End::Sud], "2 fits nobody");
        assert_eq!(known(Procedure::Standard, &[sud(0, None), voc(5), Said::VocFits, clear]), []);
        assert_eq!(known(Procedure::Standard, &[sud(0, None), voc(7), Said::Scan(Scan::Felt)]), [End::Scan]);
        assert_eq!(known(Procedure::Standard, &[clear, sud(4, None), sud(0, None), voc(7)]), [End::Scan], "it disturbed since");
        assert_eq!(known(Procedure::Standard, &[sud(1, None), Said::SudFits, sud(1, None), voc(7), clear]), [End::Sud], "asked anew");
    }

    // A practitioner's judgement, from memory.
    #[test]
    fn the_other_procedures_have_ends_of_their_own() {
        assert_eq!(known(Procedure::Resource, &[]), []);
        assert_eq!(known(Procedure::Restricted, &[]), []);
        assert_eq!(known(Procedure::Future, &[]), [End::Rehearsal, End::Voc]);
        assert_eq!(known(Procedure::Future, &[Said::Rehearsal(Rehearsal::Disturbed), voc(7)]), [End::Rehearsal]);
        assert_eq!(known(Procedure::Future, &[Said::Rehearsal(Rehearsal::Undisturbed), voc(7)]), []);
        let whole = [voc(7), Said::Scan(Scan::Clear)];
        assert_eq!(known(Procedure::RecentEvent, &whole), [End::Segments], "an event without segments was not worked through");
        assert_eq!(known(Procedure::RecentEvent, &[sud(0, Some(1)), sud(3, Some(2)), voc(7)]), [End::Segments, End::Scan]);
        assert_eq!(known(Procedure::RecentEvent, &[sud(0, Some(1)), sud(0, Some(2)), whole[0], whole[1]]), []);
    }
}
