//! The desk's page, as far as it matters when the server is lost: what `web/src/desk/reducer.ts` and `orders.ts` hold.

use std::collections::BTreeMap;

use leeward_core::wire::{DeskView, Ending, FromDesk, Order, Refusal, SetView, ToDesk, WIRE_VERSION};

use super::line::Holds;

/// So many sets of rooms that are gone are handed back, the latest (`HANDED_BACK` of the reducer).
const HANDED_BACK: usize = 8;

#[derive(Debug, Default)]
pub struct Desk {
    pub view: Option<DeskView>,
    /// A view has come since the line opened.
    pub synced: bool,
    /// How each set had ended by what this page showed; `None`: it was shown to run.
    pub shown: BTreeMap<String, Option<Ending>>,
    /// What rooms that are gone had shown last.
    gone: Vec<SetView>,
    pending: Vec<(u32, Order)>,
    next: u32,
    pub answers: BTreeMap<u32, Option<Refusal>>,
    out: Vec<FromDesk>,
    pub sent_away: Option<u16>,
}

impl Desk {
    /// Presses a key. Without a line only a stop waits for it; the answer stands under the number given.
    pub fn press(&mut self, order: Order) -> Option<u32> {
        let open = self.view.as_ref().filter(|_| self.synced).map(|view| view.epoch);
        if open.is_none() && order != Order::Stop {
            return None;
        }
        self.next += 1;
        self.pending.push((self.next, order.clone()));
        if let Some(epoch) = open {
            self.out.push(FromDesk::Order { epoch, id: self.next, order });
        }
        Some(self.next)
    }

    fn hear_view(&mut self, view: DeskView) -> Vec<FromDesk> {
        let older = |old: &DeskView| (view.epoch, view.seq) < (old.epoch, old.seq);
        if self.view.as_ref().is_some_and(older) {
            return Vec::new();
        }
        if let Some(set) = &view.set {
            self.shown.insert(set.id.clone(), set.ended);
        }
        let before = self.view.replace(view.clone());
        if std::mem::replace(&mut self.synced, true) {
            return Vec::new();
        }
        self.pending.retain(|(_, order)| *order == Order::Stop);
        let again = self.pending.iter().map(|(id, order)| FromDesk::Order { epoch: view.epoch, id: *id, order: order.clone() });
        let mut out: Vec<FromDesk> = again.collect();
        if let Some(before) = before.filter(|before| before.epoch != view.epoch) {
            self.gone.extend(before.set);
            self.gone.drain(..self.gone.len().saturating_sub(HANDED_BACK));
            out.extend(self.gone.iter().map(|set| FromDesk::HandBack { set: Box::new(set.clone()) }));
        }
        out
    }
}

impl Holds for Desk {
    type In = ToDesk;
    type Out = FromDesk;

    fn opened(&mut self) -> Vec<FromDesk> {
        vec![FromDesk::Hello { wire: WIRE_VERSION }]
    }

    fn lost(&mut self) {
        self.synced = false;
        self.out.clear();
    }

    fn hear(&mut self, message: ToDesk) -> Vec<FromDesk> {
        match message {
            ToDesk::View(view) => self.hear_view(view),
            ToDesk::Answer { id, refused } => {
                self.pending.retain(|(pending, _)| *pending != id);
                self.answers.insert(id, refused);
                Vec::new()
            }
            ToDesk::Beat(_) | ToDesk::Showing(_) | ToDesk::Call(_) | ToDesk::Reload => Vec::new(),
        }
    }

    fn tick(&mut self) {}

    fn out(&mut self) -> Vec<FromDesk> {
        std::mem::take(&mut self.out)
    }

    fn drawn(&self) -> u32 {
        self.view.as_ref().map_or(0, |view| view.seq)
    }

    fn sent_away(&mut self, code: u16) {
        self.sent_away = Some(code);
    }
}
