use super::*;
use crate::spec::chart::grade;
use crate::spec::document::{Basis, Fibre, Grade, MaterialKind, Measured};
use crate::spec::example::half_zip;
use crate::spec::id::Digest;
use crate::spec::sheet::read_csv;
use crate::spec::{Decimal, Length, Section};

fn spec() -> Spec {
    half_zip(Digest::of(b"front"))
}

fn import(text: &str, section: Section, spec: &Spec) -> Outcome {
    let sheet = read_csv(text).unwrap();
    of_sheet(&sheet, section, spec)
}

fn of_sheet(sheet: &Sheet, section: Section, spec: &Spec) -> Outcome {
    let columns = guess(sheet, section, spec);
    let unit = guess_unit(sheet, &columns).or(spec.header.unit);
    let mut count = 0;
    let mut new_id = || {
        count += 1;
        ItemId::new(format!("new-{count}"))
    };
    read(sheet, section, spec, &columns, unit, &mut new_id)
}

fn shown(outcome: &Outcome) -> Vec<(String, &Why)> {
    let left = outcome.left.iter();
    left.map(|it| (it.place.to_string(), &it.why)).collect()
}

fn cm(text: &str) -> Entered {
    Entered::read(text, Unit::Cm).unwrap()
}

#[test]
fn heads_are_known_in_their_usual_wordings() {
    let spec = spec();
    let sheet = read_csv(
        "Shoal half-zip,,,,,,,,,,\n\
         Measurements in cm,,,,,,,,,,\n\
         POM,Description,How to measure,Half/full,Tol (-),Tol (+),xs,S,M (cm),Size L,XL\n\
         A,Chest,x,half,1,1,50,52,54,56,58\n",
    )
    .unwrap();
    let columns = guess(&sheet, Section::Points, &spec);
    assert_eq!(columns.head, Some(2));
    let codes: Vec<String> = columns.fields.iter().flatten().map(Field::code).collect();
    let all = [
        "letter",
        "name",
        "how",
        "basis",
        "minus",
        "plus",
        "size.size-xs",
        "size.size-s",
        "size.size-m",
        "size.size-l",
        "size.size-xl",
    ];
    assert_eq!(codes, all);
    assert_eq!(guess_unit(&sheet, &columns), Some(Unit::Cm));
    assert!(columns.tells_rows() && columns.twice().is_none());
}

#[test]
fn values_become_the_simplest_rule_that_gives_them() {
    let mut spec = spec();
    spec.points.points.clear();
    spec.header.unit = Some(Unit::Cm);
    let outcome = import(
        "Letter,Name (cm),Basis,Tol,XS,S,M,L,XL\n\
         A,Chest,half,±1,50,52,54,56.5,59\n\
         B,Zip,,0.5,18,18,18,18,18\n\
         C,Neck,,+1/-0.5,20,21,21.5,23,23.5\n\
         ,Cuff,full,\"0,3\",8.5,9,9.5,10,10.5\n",
        Section::Points,
        &spec,
    );
    assert_eq!(shown(&outcome), []);
    assert_eq!(outcome.rows, 4);
    let points = &outcome.spec.points.points;
    let Some(Grade::Segments { segments }) = &points[0].grade else {
        panic!("{:?}", points[0].grade)
    };
    let ends: Vec<_> = segments
        .iter()
        .map(|it| (it.from.as_str(), it.to.as_str(), it.step))
        .collect();
    assert_eq!(
        ends,
        [
            ("size-xs", "size-m", cm("2")),
            ("size-m", "size-xl", cm("2.5"))
        ]
    );
    assert_eq!(points[0].base, Some(cm("54")));
    assert_eq!(points[0].basis, Some(Basis::Half));
    assert_eq!(points[1].grade, Some(Grade::Same {}));
    assert!(matches!(points[2].grade, Some(Grade::Explicit { .. })));
    assert_eq!(
        (points[2].minus, points[2].plus),
        (Some(cm("0.5")), Some(cm("1")))
    );
    assert_eq!(points[3].letter, "D");
    let values = grade(&outcome.spec);
    let values = values.values(&points[2].id).unwrap();
    let wanted = ["20", "21", "21.5", "23", "23.5"].map(|it| cm(it).nm);
    assert_eq!(values.rounded, wanted);
}

#[test]
fn a_rule_that_gives_the_values_stays_what_it_is() {
    let spec = spec();
    let graded = grade(&spec);
    let mut text = "Letter,XS,S,M,L,XL\n".to_owned();
    for point in &spec.points.points {
        let values = &graded.values(&point.id).unwrap().rounded;
        let step = point.step.unwrap().nm;
        let values = values
            .iter()
            .map(|it| it.show(Unit::Inch, step, Default::default()));
        text += &format!(
            "{},{}\n",
            point.letter,
            values.collect::<Vec<_>>().join(",")
        );
    }
    let outcome = import(&text, Section::Points, &spec);
    assert_eq!(shown(&outcome), []);
    assert_eq!(outcome.spec, spec);
    assert_eq!(outcome.rows, spec.points.points.len());

    // With one base value changed, its rule stays and takes the new one; what derives from it
    // still gives its own values.
    let a = &spec.points.points[0];
    let values = graded.values(&a.id).unwrap();
    let up = values.rounded.iter().map(|it| {
        (*it + Length::nm(25_400_000)).show(Unit::Inch, a.step.unwrap().nm, Default::default())
    });
    let text = format!(
        "Letter,XS,S,M,L,XL\nA,{}\n",
        up.collect::<Vec<_>>().join(",")
    );
    let outcome = import(&text, Section::Points, &spec);
    let after = &outcome.spec.points.points[0];
    assert_eq!(after.grade, a.grade);
    assert_eq!(
        after.base.unwrap().nm - a.base.unwrap().nm,
        Length::nm(25_400_000)
    );
}

#[test]
fn what_cannot_be_read_is_named_by_its_cell_and_its_row_is_left() {
    let spec = spec();
    let outcome = import(
        "Letter,Name,Basis,Tol -,XS,S,M,L,XL\n\
         A,Chest,half,abc,20,21,22,23,24\n\
         B,,sideways,,,,,,\n\
         C,,,,20,21,,23,24\n\
         D,,,,20,21,22.03,23,24\n\
         a,Again,,,,,,,\n\
         ,BODY,,,,,,,\n\
         ,,half,,,,,,\n\
         Z,New point,linear,1/8,1,1,1,1,1\n",
        Section::Points,
        &spec,
    );
    let step = spec.points.points[3].step.unwrap();
    assert_eq!(
        shown(&outcome),
        [
            ("D2".to_owned(), &Why::Length(NotALength::NotANumber)),
            ("C3".to_owned(), &Why::UnknownWord(Field::Basis)),
            ("G4".to_owned(), &Why::SizesMissing(vec!["M".to_owned()])),
            ("G5".to_owned(), &Why::NotAMultiple(step)),
            (
                "A6".to_owned(),
                &Why::LetterTwice(Place { row: 1, column: 0 })
            ),
            ("B7".to_owned(), &Why::OnlyAName),
            ("C8".to_owned(), &Why::Nameless),
        ]
    );
    assert_eq!(outcome.rows, 1);
    let (old, new) = (&spec.points.points, &outcome.spec.points.points);
    assert_eq!(new[..old.len()], old[..]);
    assert_eq!(
        (new.len() - old.len(), new[old.len()].letter.as_str()),
        (1, "Z")
    );
}

#[test]
fn dates_faults_and_merged_cells_are_refused_formulas_told() {
    let spec = spec();
    let mut sheet =
        read_csv("Letter,Name,Base\nA,Chest,x\nB,Hem,x\nC,Zip,x\nD,Neck,x\nE,Cuff,x\n").unwrap();
    let at = |row| Place { row, column: 2 };
    sheet.put(at(1), Cell::Date).unwrap();
    sheet.put(at(2), Cell::Fault("#REF!".to_owned())).unwrap();
    sheet.put(at(3), Cell::Merged(at(2))).unwrap();
    sheet.put(at(4), Cell::Uncomputed).unwrap();
    sheet.put(at(5), Cell::Formula("9.5".to_owned())).unwrap();
    let outcome = of_sheet(&sheet, Section::Points, &spec);
    assert_eq!(
        shown(&outcome),
        [
            ("C2".to_owned(), &Why::Date),
            ("C3".to_owned(), &Why::Fault),
            ("C4".to_owned(), &Why::Merged(at(2))),
            ("C5".to_owned(), &Why::Uncomputed),
        ]
    );
    assert_eq!(outcome.told.len(), 1);
    assert_eq!(
        (outcome.told[0].place, &outcome.told[0].why),
        (at(5), &Why::Formula)
    );
    assert_eq!(outcome.rows, 1);
}

#[test]
fn a_typed_rule_must_give_the_values_that_stand_beside_it() {
    let spec = spec();
    let row = |rule: &str| {
        let text = format!("Letter,Name,Grade,XS,S,M,L,XL\nZ,New,\"{rule}\",20,21,22,23,24\n");
        import(&text, Section::Points, &spec)
    };
    let one = row("XS-M 1, M-XL 1");
    assert_eq!((shown(&one), one.told.len()), (vec![], 0));
    let Some(Grade::Segments { segments }) = &one.spec.points.points.last().unwrap().grade else {
        panic!()
    };
    assert_eq!(segments.len(), 2);
    let other = row("2");
    assert_eq!(other.told[0].why, Why::RuleDiffers);
    assert_eq!(other.told[0].place.to_string(), "C2");
    let wrong = row("a bit");
    assert!(matches!(shown(&wrong)[..], [(_, Why::Grade(_))]));
}

#[test]
fn a_list_of_materials_is_read_over_the_one_that_is_there() {
    let spec = spec();
    let old = &spec.materials.materials[0];
    let text = format!(
        "Item code;Ref;Type;Content;Vendor;Weight (gsm);Width;Cons.;UOM\n\
         {};;;;New mill;;;;\n\
         X1;Shell;woven;80% cotton 20% polyester;Mill;180 g/m²;\"150 cm\";1,35;m\n\
         X2;Tape;elastic;Nylon 82%, spandex 18 %;;;;0.9 m;\n\
         X3;Bad;marble;;;;;;\n\
         X4;Bad;;50% unobtainium 50% cotton;;;;;\n\
         X5;Bad;;half cotton;;;;;\n\
         X6;Bad;;;;heavy;;-1;\n",
        old.letter
    );
    let text = text.replace("Item code;Ref", "Letter;Name");
    let outcome = import(&text, Section::Materials, &spec);
    assert_eq!(
        shown(&outcome),
        [
            ("C5".to_owned(), &Why::UnknownWord(Field::Kind)),
            ("D6".to_owned(), &Why::Fibre("unobtainium".to_owned())),
            ("D7".to_owned(), &Why::Composition),
            ("F8".to_owned(), &Why::NotANumber),
            ("H8".to_owned(), &Why::Negative),
        ]
    );
    let after = &outcome.spec.materials.materials;
    assert_eq!(after.len(), spec.materials.materials.len() + 2);
    assert_eq!(
        (after[0].supplier.as_str(), &after[0].composition),
        ("New mill", &old.composition)
    );
    let [.., shell, tape] = &after[..] else {
        panic!()
    };
    assert_eq!(shell.kind, Some(MaterialKind::WovenFabric));
    let fibres: Vec<_> = shell
        .composition
        .iter()
        .map(|it| (it.fibre, it.percent))
        .collect();
    assert_eq!(
        fibres,
        [
            (Some(Fibre::Cotton), Some(Decimal::new(80, 0))),
            (Some(Fibre::Polyester), Some(Decimal::new(20, 0))),
        ]
    );
    assert_eq!(shell.fabric.mass, Some(Decimal::new(180, 0)));
    assert_eq!(shell.fabric.width, Some(cm("150")));
    assert_eq!(shell.consumption.amount, Some(Decimal::new(135, 2)));
    assert_eq!(shell.consumption.unit, Some(Measured::Metre));
    assert_eq!(tape.composition[1].fibre, Some(Fibre::Elastane));
    assert_eq!(tape.consumption.unit, Some(Measured::Metre));
}

#[test]
fn wastage_is_a_percentage_whose_basis_stays() {
    let spec = spec();
    let letter = &spec.materials.materials[0].letter;
    let read = |typed: &str| {
        let text = format!("Letter;Name;Wastage, %\n{letter};;{typed}\n");
        import(&text, Section::Materials, &spec)
    };
    let before = spec.materials.materials[0].wastage.clone();
    let before = before.unwrap_or_default();
    for (typed, percent) in [("7", 70), ("7,5 %", 75), ("7.5%", 75)] {
        let outcome = read(typed);
        let after = &outcome.spec.materials.materials[0].wastage;
        let after = after.as_ref().expect("it was told");
        assert_eq!(after.percent, Some(Decimal::new(percent, 1)), "{typed}");
        assert_eq!(after.basis, before.basis);
    }
    assert_eq!(shown(&read("-1")), [("C2".to_owned(), &Why::Negative)]);
    assert_eq!(shown(&read("7 m")), [("C2".to_owned(), &Why::NotANumber)]);
}

#[test]
fn sizes_have_a_column_each_or_the_base_size_stands_alone() {
    let spec = spec();
    let missing = |heads: &str| -> Vec<String> {
        let sheet = read_csv(&format!("Letter,Name,{heads}\n")).unwrap();
        let columns = guess(&sheet, Section::Points, &spec);
        let missing = columns.sizes_missing(&spec).into_iter();
        missing.map(|size| size.code.clone()).collect()
    };
    assert_eq!(missing("XS,S,M,L,XL"), [""; 0]);
    assert_eq!(missing("M"), [""; 0]);
    assert_eq!(missing("Base"), [""; 0]);
    assert_eq!(missing("S,M"), ["XS", "L", "XL"]);
    assert_eq!(missing("S"), ["XS", "M", "L", "XL"]);
}
