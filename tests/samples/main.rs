//! Garments with known faults, and how often their evaluation names the right cause. Builds without
//! the service; `--nocapture` prints the table.

mod chance;
mod fault;
mod garment;
mod table;

#[path = "../support/packs.rs"]
#[expect(dead_code, reason = "the drawings are not looked at here")]
mod packs;

use fellseam::exchange::round::MOST_PIECES;
use fellseam::sample::evaluation::evaluate;
use fellseam::spec::Length;

use chance::Chance;
use fault::Kind;
use table::{Row, Table, run};

/// Of a row, in percent.
fn percent(row: &Row) -> f64 {
    100.0 * row.right as f64 / row.samples as f64
}

/// The goal is 95 % of each kind of fault, with its place and nothing beside it, and a cause named
/// in 2 % of faultless samples at most.
fn holds(table: &Table, least: impl Fn(Kind) -> f64) {
    println!("{table}");
    for (kind, row) in &table.rows {
        let least = least(*kind);
        let missed = || row.missed[..row.missed.len().min(40)].join("\n");
        assert!(
            percent(row) >= least,
            "{}: {least} %\n{}",
            kind.name(),
            missed()
        );
    }
}

#[test]
fn one_piece_shows_what_one_piece_can_show() {
    let table = run(1, 1000, 20);
    holds(&table, |kind| match kind {
        Kind::Nothing => 98.0,
        // Twice a tolerance of 3 mm is 6 mm, and a tape read once scatters by up to 2.5 mm: what
        // names that in one reading would accuse every fifth faultless garment.
        Kind::Faint => 70.0,
        _ => 95.0,
    });
}

#[test]
fn two_pieces_show_more() {
    let table = run(2, 300, 21);
    holds(&table, |kind| match kind {
        Kind::Nothing => 98.0,
        // As above, with a scatter of 1.8 mm.
        Kind::Faint => 82.0,
        _ => 95.0,
    });
}

#[test]
fn four_pieces_show_every_kind_of_fault() {
    let table = run(4, 100, 22);
    holds(&table, |kind| match kind {
        Kind::Nothing => 98.0,
        _ => 95.0,
    });
}

/// As many pieces as a round can ask for, every fifth value off by a factor that somebody may type:
/// the page of such a round has to come all the same. Before the search was bounded it took minutes.
#[test]
#[allow(clippy::disallowed_methods, reason = "a figure is measured")]
fn the_largest_round_full_of_nonsense_is_read_in_time() {
    let contract = garment::contract(packs::PACKS[0]);
    let mut chance = Chance::new(23);
    let sizes: Vec<_> = (0..MOST_PIECES)
        .map(|piece| contract.sizes[piece % contract.sizes.len()].clone())
        .collect();
    let mut pieces = garment::made(&contract, &sizes, &[], 0.2, &mut chance);
    let mut nonsense = 0;
    for value in pieces
        .iter_mut()
        .flat_map(|it| &mut it.readings)
        .flat_map(|it| it.values.values_mut())
    {
        if chance.below(5) == 0 {
            let percent = *chance.one(&[10, 50, 80, 120, 200, 254, 1000]);
            *value = Length::nm(value.as_nm() / 100 * percent);
            nonsense += 1;
        }
    }
    let begun = std::time::Instant::now();
    let evaluation = evaluate(&contract, &pieces, &[]);
    println!("{nonsense} values off, read in {:?}", begun.elapsed());
    let diagnosis = evaluation.diagnosis.expect("it was measured");
    // Nothing that is off is passed over in silence.
    assert!(!diagnosis.findings.is_empty() && evaluation.summary.out > nonsense / 2);
}
