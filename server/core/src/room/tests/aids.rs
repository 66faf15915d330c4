//! What stands on the client's page beside the sets.

use super::play::*;
use crate::room::MomentKind;
use crate::wire::*;

const ID: &str = "018f2c7e-7d0a-7c3e-9a3e-5a1d0f6b7c11";

fn harbour() -> Option<Steadying> {
    Some(Steadying::Resource { words: "The quay at six in the morning".into() })
}

fn sud() -> Option<Pad> {
    Some(Pad { scale: Scale::Sud, moment: Moment::BackAtTarget })
}

/// The answer to what was asked first, second and so on.
fn rated(asked: u32, value: Option<u8>) -> FromStage {
    FromStage::Rated { id: ID.into(), asked, value }
}

#[test]
fn something_to_steady_by_stands_there_until_it_is_taken_away_or_a_set_begins() {
    let mut play = Play::ready();
    assert_eq!(play.order(Order::Show { steadying: harbour() }), None);
    assert_eq!(play.stage_view().steadying, harbour());
    assert_eq!(play.desk_view().steadying, harbour());
    assert_eq!(play.desk_view().state, RoomState::Ready, "it holds nothing");
    play.order(Order::Show { steadying: None });
    assert_eq!(play.stage_view().steadying, None);
    play.order(Order::Show { steadying: Some(Steadying::Orient) });
    assert_eq!(play.order(Order::Start), None);
    assert_eq!(play.stage_view().steadying, None, "the set alone");
    play.run(3_000.0);
    assert_eq!(play.order(Order::Show { steadying: harbour() }), Some(Refusal::WrongState), "never over something that moves");
}

#[test]
fn what_the_page_shows_has_some_words_and_not_too_many() {
    let mut play = Play::ready();
    for words in [" ", &"x".repeat(301)] {
        let shown = Some(Steadying::Resource { words: words.into() });
        assert!(matches!(play.order(Order::Show { steadying: shown }), Some(Refusal::Limit { .. })), "{words}");
    }
    assert_eq!(play.desk_view().steadying, None);
}

#[test]
fn who_is_not_let_in_reads_nothing_of_it() {
    let mut play = Play::ready();
    play.order(Order::Show { steadying: harbour() });
    play.order(Order::Ask { pad: sud() });
    play.seat(SeatState::Waiting);
    assert_eq!((play.stage_view().steadying.clone(), play.stage_view().pad), (None, None));
    assert_eq!(play.order(Order::Show { steadying: harbour() }), Some(Refusal::WrongState));
}

// SUD 0 to 10 (Wolpe 1990), VOC 1 to 7 (Shapiro 1989).
#[test]
fn a_rating_of_the_client_comes_once_under_its_id_and_lies_on_its_scale() {
    let mut play = Play::ready();
    play.stage_says(rated(1, Some(4)));
    assert_eq!(play.desk_view().rated, None, "nothing was asked");
    assert_eq!(play.order(Order::Ask { pad: sud() }), None);
    assert_eq!(play.stage_view().pad, Some(OpenPad { scale: Scale::Sud, asked: 1 }));
    play.stage_says(rated(1, Some(4)));
    let said = play.desk_view().rated.clone().unwrap();
    assert_eq!((said.id.as_str(), said.pad.moment, said.value), (ID, Moment::BackAtTarget, Some(4)));
    assert_eq!((play.stage_view().pad, play.desk_view().pad), (None, None), "the scale is gone");
    play.stage_says(rated(1, Some(9)));
    assert_eq!(play.desk_view().rated.as_ref().unwrap().value, Some(4), "told again, it changes nothing");
    play.order(Order::Ask { pad: Some(Pad { scale: Scale::Voc, moment: Moment::Installation }) });
    assert_eq!(play.desk_view().rated, None, "a new question has no answer yet");
    play.stage_says(rated(1, Some(6)));
    assert_eq!(play.desk_view().rated, None, "an answer to the question before is none to this");
    play.stage_says(rated(2, None));
    assert_eq!(play.desk_view().rated.as_ref().unwrap().value, None, "passed over");
}

#[test]
fn a_rating_off_the_scale_or_without_an_id_is_no_page_of_ours() {
    for (scale, value, id) in [(Scale::Sud, 11, ID), (Scale::Voc, 0, ID), (Scale::Voc, 8, ID), (Scale::Sud, 3, "3")] {
        let mut play = Play::ready();
        play.order(Order::Ask { pad: Some(Pad { scale, moment: Moment::AfterSet }) });
        play.stage_says(FromStage::Rated { id: id.into(), asked: 1, value: Some(value) });
        assert_eq!(play.closed().len(), 1, "{scale:?} {value} {id}");
    }
}

#[test]
fn a_scale_is_asked_of_a_page_that_is_there_and_never_over_a_set() {
    let mut play = Play::running(2_000.0);
    assert_eq!(play.order(Order::Ask { pad: sud() }), Some(Refusal::WrongState));
    let mut gone = Play::ready();
    gone.mute.insert(STAGE);
    gone.run(8_000.0);
    assert_eq!(gone.order(Order::Ask { pad: sud() }), Some(Refusal::Needs));
}

#[test]
fn after_a_stop_the_client_may_need_longer_and_ready_or_a_set_ends_that() {
    let mut play = Play::running(3_000.0);
    play.stage_says(FromStage::Longer);
    assert!(!play.desk_view().longer, "nothing waits for them");
    play.stage_says(FromStage::Stop);
    play.stage_says(FromStage::Longer);
    play.stage_says(FromStage::Longer);
    assert!(play.desk_view().longer && play.stage_view().longer);
    let said = play.moments().into_iter().filter(|kind| *kind == MomentKind::ClientLonger).count();
    assert_eq!(said, 1, "told again, it is written once");
    play.run(1_500.0);
    assert_ne!(play.desk_view().state, RoomState::Ready, "nothing starts before their Ready");
    play.stage_says(FromStage::Ready);
    assert!(!play.desk_view().longer);
}
