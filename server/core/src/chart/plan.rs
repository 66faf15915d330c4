//! A plan of treatment in one picture: what belongs together in a row, how old the client was to the right.

use super::draw::{Shape, line, text};
use super::layout::{Linear, WIDTH, tenth, text_width};
use super::{Anchor, Chart, Element};

/// Of a memory whose age nobody knows.
const UNKNOWN: f64 = 56.0;
/// The lowest and the highest age.
const AGES: (f64, f64) = (124.0, 412.0);
const NOW: f64 = 484.0;
const COMING: f64 = 566.0;
const TOP: f64 = 8.0;
/// From one row of marks to the next, and the height of a name above them.
const LANE: f64 = 26.0;
const NAME: f64 = 22.0;
/// From a mark to its figure.
const BESIDE: f64 = 11.0;

/// Where in a life a target lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LifeTime {
    /// A memory, from this age in years if it is known.
    Past(Option<u8>),
    /// What sets it off now.
    Now,
    /// A situation to come.
    ToCome,
}

/// A target in the plan.
#[derive(Clone, Debug, PartialEq)]
pub struct PlanMark {
    /// Its number within the client.
    pub number: u32,
    /// Where in a life it lies.
    pub at: LifeTime,
    /// Its row: an index of the groups.
    pub group: usize,
    /// Such as "earliest"; empty where nothing is marked.
    pub marked: &'static str,
    /// It is at its end.
    pub over: bool,
    /// What it came up from: an index of the marks.
    pub parent: Option<usize>,
    /// Its row of the table: target, when, belongs with, came up from, stands at.
    pub cells: [String; 5],
}

impl PlanMark {
    fn x(&self, ages: Linear) -> f64 {
        match self.at {
            LifeTime::Past(Some(age)) => ages.at(f64::from(age)),
            LifeTime::Past(None) => UNKNOWN,
            LifeTime::Now => NOW,
            LifeTime::ToCome => COMING,
        }
    }

    fn words(&self) -> String {
        format!("{} {}", self.number, self.marked).trim_end().to_owned()
    }

    /// Its words stand to the right, or to the left where they would leave the picture.
    fn is_turned(&self, x: f64) -> bool {
        x + BESIDE + text_width(&self.words()) > WIDTH
    }

    /// What it takes up of its row.
    fn span(&self, x: f64) -> (f64, f64) {
        let words = BESIDE + text_width(&self.words()) + 6.0;
        if self.is_turned(x) { (x - words, x + BESIDE) } else { (x - BESIDE, x + words) }
    }
}

/// The plan: a row for each of `groups` that has targets, each named. `note` is said below it.
///
/// # Panics
/// When a mark names a group or a parent that is not there.
#[must_use]
pub fn plan(marks: &[PlanMark], groups: &[String], note: Option<&'static str>) -> Chart {
    let ages = scale(marks);
    let (places, mut elements, bottom) = rows(marks, groups, ages);
    let joins = marks.iter().enumerate().filter_map(|(at, mark)| Some((places[at], places[mark.parent?])));
    elements.extend(joins.map(|((x, y), (from_x, from_y))| line(from_x, from_y, x, y, "join")));
    for (mark, &(x, y)) in marks.iter().zip(&places) {
        elements.push(if mark.over { Shape::Disc.at(x, y) } else { Shape::Ring.at(x, y) });
        let (at, anchor) = if mark.is_turned(x) { (x - BESIDE, Anchor::End) } else { (x + BESIDE, Anchor::Start) };
        elements.push(text(at, y + 4.0, anchor, "value", mark.words()));
    }
    elements.extend(axis(marks, ages, bottom));
    Chart {
        title: "The plan by age",
        description: "A row for what belongs together; the further to the right, the older the client was, and what is set off now or lies \
            ahead stands at the right end. The figures are the targets' numbers. A ring is a target still to be done, a disc one at its end; \
            a dotted line leads from a target to what came up from it."
            .to_owned(),
        width: WIDTH,
        height: bottom + 26.0,
        elements,
        caption: caption(marks),
        note,
        columns: &["Target", "When", "Belongs with", "Came up from", "Stands at"],
        rows: marks.iter().map(|mark| mark.cells.to_vec()).collect(),
    }
}

fn known(marks: &[PlanMark]) -> impl Iterator<Item = u8> + '_ {
    marks.iter().filter_map(|mark| if let LifeTime::Past(age) = mark.at { age } else { None })
}

fn scale(marks: &[PlanMark]) -> Linear {
    let lowest = f64::from(known(marks).min().unwrap_or(0));
    let highest = f64::from(known(marks).max().unwrap_or(0));
    // One age alone stands in the middle.
    let domain = if lowest < highest { (lowest, highest) } else { (lowest - 1.0, lowest + 1.0) };
    Linear { domain, range: AGES }
}

/// Where each mark stands; names of the rows and lines between them; and where the rows end.
fn rows(marks: &[PlanMark], groups: &[String], ages: Linear) -> (Vec<(f64, f64)>, Vec<Element>, f64) {
    let mut places = vec![(0.0, 0.0); marks.len()];
    let (mut elements, mut top) = (Vec::new(), TOP);
    for (group, name) in groups.iter().enumerate() {
        let mut own: Vec<usize> = (0..marks.len()).filter(|&at| marks[at].group == group).collect();
        if own.is_empty() {
            continue;
        }
        own.sort_by(|&a, &b| marks[a].x(ages).total_cmp(&marks[b].x(ages)));
        elements.push(text(0.0, top + 14.0, Anchor::Start, "name", name.clone()));
        // Two that would touch stand below each other.
        let mut ends: Vec<f64> = Vec::new();
        for at in own {
            let x = marks[at].x(ages);
            let (from, to) = marks[at].span(x);
            let lane = ends.iter().position(|&end| end <= from).unwrap_or(ends.len());
            if lane == ends.len() {
                ends.push(to);
            } else {
                ends[lane] = to;
            }
            #[expect(clippy::cast_precision_loss, reason = "lanes are counted in dozens")]
            let down = lane as f64;
            places[at] = (x, tenth(top + NAME + LANE * (down + 0.5)));
        }
        #[expect(clippy::cast_precision_loss, reason = "lanes are counted in dozens")]
        let lanes = ends.len() as f64;
        top += NAME + LANE * lanes;
        elements.push(line(0.0, top, WIDTH, top, "grid"));
    }
    (places, elements, top)
}

/// Ages at round steps, and the words for what has none.
fn axis(marks: &[PlanMark], ages: Linear, bottom: f64) -> Vec<Element> {
    let mut elements = vec![line(0.0, bottom, WIDTH, bottom, "axis")];
    let mut tick = |x: f64, words: String, class| {
        elements.push(line(x, bottom, x, bottom + 4.0, "axis"));
        elements.push(text(x, bottom + 18.0, Anchor::Middle, class, words));
    };
    if let (Some(lowest), Some(highest)) = (known(marks).min(), known(marks).max()) {
        let step = [1, 2, 5, 10, 20].into_iter().find(|step| (highest - lowest) / step <= 6).unwrap_or(20);
        let round = (lowest..=highest).filter(|age| age % step == 0 || lowest == highest);
        // Where no round age lies between them, the ends are said.
        let said: Vec<u8> = if round.clone().next().is_some() { round.collect() } else { vec![lowest, highest] };
        for (nth, age) in said.into_iter().enumerate() {
            tick(ages.at(f64::from(age)), if nth == 0 { format!("age {age}") } else { age.to_string() }, "tick");
        }
    }
    let has = |at| marks.iter().any(|mark| mark.at == at);
    for (at, x, words) in
        [(LifeTime::Past(None), UNKNOWN, "age not known"), (LifeTime::Now, NOW, "now"), (LifeTime::ToCome, COMING, "to come")]
    {
        if has(at) {
            tick(x, words.to_owned(), "tick");
        }
    }
    elements
}

/// What the plan holds, and how much of it is done.
fn caption(marks: &[PlanMark]) -> String {
    let count = |of: fn(LifeTime) -> bool| marks.iter().filter(|mark| of(mark.at)).count();
    let many = |count: usize, one: &str, more: &str| (count > 0).then(|| format!("{count} {}", if count == 1 { one } else { more }));
    let memories = many(count(|at| matches!(at, LifeTime::Past(_))), "memory", "memories").map(|memories| memories + &between(marks));
    let triggers = many(count(|at| at == LifeTime::Now), "present trigger", "present triggers");
    let coming = many(count(|at| at == LifeTime::ToCome), "situation to come", "situations to come");
    let parts: Vec<String> = [memories, triggers, coming].into_iter().flatten().collect();
    let held = match parts.split_last() {
        None => "Nothing is in the plan".to_owned(),
        Some((last, [])) => last.clone(),
        Some((last, before)) => format!("{} and {last}", before.join(", ")),
    };
    let over = marks.iter().filter(|mark| mark.over).count();
    let done = match over {
        0 => "None has reached its end.".to_owned(),
        1 => "One has reached its end.".to_owned(),
        over if over == marks.len() => "All have reached their end.".to_owned(),
        over => format!("{over} have reached their end."),
    };
    format!("{held}. {done}")
}

/// Such as " from age 6 to 31".
fn between(marks: &[PlanMark]) -> String {
    match (known(marks).min(), known(marks).max()) {
        (Some(lowest), Some(highest)) if lowest < highest => format!(" from age {lowest} to {highest}"),
        (Some(age), _) => format!(" from age {age}"),
        _ => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mark(number: u32, at: LifeTime, group: usize) -> PlanMark {
        PlanMark { number, at, group, marked: "", over: false, parent: None, cells: std::array::from_fn(|_| number.to_string()) }
    }

    fn groups() -> Vec<String> {
        vec!["Left on her own".into(), "Nobody yet".into(), "By themselves".into()]
    }

    /// The points of the marks by their class.
    fn drawn(chart: &Chart, wanted: &str) -> usize {
        let class = |element: &Element| match element {
            Element::Line { class, .. } | Element::Path { class, .. } | Element::Text { class, .. } => *class,
        };
        chart.elements.iter().filter(|element| class(element) == wanted).count()
    }

    #[test]
    fn every_target_has_its_mark_and_a_row_without_targets_is_not_drawn() {
        let mut marks = vec![mark(1, LifeTime::Past(Some(6)), 0), mark(2, LifeTime::Now, 0), mark(3, LifeTime::ToCome, 2)];
        (marks[0].over, marks[1].parent) = (true, Some(0));
        let chart = plan(&marks, &groups(), None);
        assert_eq!((drawn(&chart, "mark disc"), drawn(&chart, "mark ring"), drawn(&chart, "join"), drawn(&chart, "name")), (1, 2, 1, 2));
        assert_eq!(chart.caption, "1 memory from age 6, 1 present trigger and 1 situation to come. One has reached its end.");
        assert_eq!(chart.rows.len(), 3);
    }

    #[test]
    fn older_is_further_right_and_what_has_no_age_stands_apart() {
        let marks = [LifeTime::Past(None), LifeTime::Past(Some(4)), LifeTime::Past(Some(40)), LifeTime::Now, LifeTime::ToCome];
        let marks: Vec<PlanMark> = (1..).zip(marks).map(|(number, at)| mark(number, at, 0)).collect();
        let ages = scale(&marks);
        let xs: Vec<f64> = marks.iter().map(|mark| mark.x(ages)).collect();
        assert!(xs.windows(2).all(|two| two[0] + 20.0 < two[1]), "{xs:?}");
    }

    #[test]
    fn however_many_there_are_none_lies_on_another_and_nothing_stands_outside() {
        let at = [
            LifeTime::Past(Some(7)),
            LifeTime::Past(None),
            LifeTime::Past(Some(90)),
            LifeTime::ToCome,
            LifeTime::Now,
            LifeTime::Past(Some(8)),
        ];
        let mut marks: Vec<PlanMark> = (0..60).map(|nth| mark(nth + 1, at[nth as usize % 6], nth as usize % 3)).collect();
        marks.iter_mut().step_by(4).for_each(|mark| mark.marked = "earliest and worst");
        let chart = plan(&marks, &groups(), None);
        let ages = scale(&marks);
        let (places, _, bottom) = rows(&marks, &groups(), ages);
        for (one, a) in places.iter().enumerate() {
            assert!((0.0..=bottom).contains(&a.1));
            let (from, to) = marks[one].span(a.0);
            assert!(from >= -1.0 && to <= WIDTH + 12.0, "{from} {to}");
            for (two, b) in places.iter().enumerate().skip(one + 1) {
                let other = marks[two].span(b.0);
                assert!(a.1 != b.1 || to <= other.0 || other.1 <= from, "{one} and {two}");
            }
        }
        assert!(chart.height > bottom);
    }

    #[test]
    fn ages_are_said_at_round_steps_or_at_the_ends() {
        let labels = |ages: &[u8]| {
            let marks: Vec<PlanMark> = (1..).zip(ages).map(|(number, age)| mark(number, LifeTime::Past(Some(*age)), 0)).collect();
            let chart = plan(&marks, &groups(), None);
            let ticks = chart.elements.iter().filter_map(|element| match element {
                Element::Text { class: "tick", text, .. } => Some(text.clone()),
                _ => None,
            });
            ticks.collect::<Vec<_>>()
        };
        assert_eq!(labels(&[7]), ["age 7"]);
        assert_eq!(labels(&[6, 31]), ["age 10", "15", "20", "25", "30"]);
        assert_eq!(labels(&[11, 23]), ["age 12", "14", "16", "18", "20", "22"]);
    }
}
