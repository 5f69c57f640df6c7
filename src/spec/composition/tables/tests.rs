use super::*;

/// The sixteen languages of the table, and the United States.
#[test]
fn the_usual_fibres_have_a_name_in_every_language() {
    let tables = Tables::shipped();
    assert_eq!(tables.languages().len(), 17);
    for language in tables.languages() {
        for fibre in Fibre::ALL.iter().copied().filter(|it| *it != Fibre::Other) {
            let is_usual = tables.fibre(fibre, Market::Eu, "fi").is_some();
            let all = matches!(language, "en" | "de" | "en-US");
            let found = tables.fibre(fibre, Market::Eu, language).is_some();
            assert_eq!(found, is_usual || all, "{fibre:?} {language}");
        }
        for component in Component::ALL {
            assert!(tables.component(*component, Market::Eu, language).is_some());
        }
        for phrase in [Phrase::OtherFibres, Phrase::AnimalOrigin] {
            assert!(tables.phrase(phrase, Market::Eu, language).is_some());
        }
    }
    let american = Fibre::ALL
        .iter()
        .filter(|it| tables.fibre(**it, Market::Us, "en").is_some());
    assert_eq!(american.count(), Fibre::ALL.len() - 1);
}

/// In the language of whoever reads the label, the United States' names are only theirs.
#[test]
fn american_names_stay_on_american_labels() {
    let tables = Tables::shipped();
    let name = |market, language| {
        let wording = tables.fibre(Fibre::Polyamide, market, language);
        wording.map(|it| it.text.as_str())
    };
    assert_eq!(name(Market::Us, "en"), Some("nylon"));
    assert_eq!(name(Market::Us, "es"), Some("poliamida"));
    assert_eq!(name(Market::Uk, "en-US"), Some("polyamide"));
    assert_eq!(name(Market::Other, "en"), Some("polyamide"));
}

#[test]
fn the_german_names_are_those_of_the_annex() {
    let tables = Tables::shipped();
    let annex = include_str!("../../../../tests/reference/eu_fibre_names_annex1.csv");
    let mut tried = 0;
    for fibre in Fibre::ALL.iter().copied().filter(|it| *it != Fibre::Other) {
        let Some(wording) = tables.fibre(fibre, Market::Eu, "de") else {
            panic!("{fibre:?}");
        };
        if wording.source.is_verified() {
            assert!(annex.contains(&wording.text), "{fibre:?}: {}", wording.text);
            tried += 1;
        }
    }
    assert_eq!(tried, 34);
}

#[test]
fn the_usual_names_are_those_of_the_published_table() {
    let tables = Tables::shipped();
    let table = include_str!("../../../../tests/reference/fibres15_eu_languages.csv");
    let mut rows = table.lines().filter(|line| !line.starts_with('#'));
    let head: Vec<&str> = rows.next().unwrap().split(',').collect();
    let languages = &head[..16];
    let usual = [
        Fibre::Cotton,
        Fibre::Polyester,
        Fibre::Polyamide,
        Fibre::Elastane,
        Fibre::Viscose,
        Fibre::Modal,
        Fibre::Lyocell,
        Fibre::Wool,
        Fibre::Silk,
        Fibre::Linen,
        Fibre::Acrylic,
        Fibre::Polypropylene,
        Fibre::Acetate,
        Fibre::Hemp,
        Fibre::Cupro,
    ];
    for (row, fibre) in rows.zip(usual) {
        for (cell, language) in row.split(',').zip(languages) {
            let name = tables.fibre(fibre, Market::Eu, language).unwrap();
            // Where the table allows several words, ours is one of them.
            assert!(
                cell.contains(&name.text),
                "{language} {cell}: {}",
                name.text
            );
        }
    }
}

#[test]
fn edited_tables_are_refused_where_they_are_wrong() {
    let shipped = Files {
        fibres: "fibre,language,name,status,on\ncotton,en,cotton,verified,2026-11-25\n",
        components: "component,language,name,status,on\n",
        phrases: "phrase,language,text,status,on\n",
        rules: include_str!("../../data/fibre_rules.json"),
    };
    assert!(Tables::read(shipped).is_ok());
    let fibres = "fibre,language,name,status,on\nkotton,en,cotton,verified,2026-11-25\n";
    let wrong = Tables::read(Files { fibres, ..shipped }).unwrap_err();
    assert_eq!(wrong.to_string(), "fibres, line 2: no fibre `kotton`");
    for (piece, instead) in [
        ("\"percent\": \"15\"", "\"percent\": 15"),
        ("\"percent\": \"25\", ", ""),
        ("\"on\": \"2026-11-25\"", "\"on\": \"yesterday\""),
        ("\"elastodiene\"", "\"rubber\""),
        ("\"article\": \"8\"", "\"artikel\": \"8\""),
    ] {
        assert!(shipped.rules.contains(piece), "{piece}");
        let rules = shipped.rules.replacen(piece, instead, 1);
        let wrong = Tables::read(Files {
            rules: &rules,
            ..shipped
        })
        .unwrap_err();
        assert_eq!(wrong.table, "rules");
        assert!(wrong.line > 1, "{piece}: {wrong}");
    }
}

/// What of our rules is marked as verified is so marked in the list that they are from.
#[test]
fn the_rules_claim_no_more_than_was_verified() {
    let list = include_str!("../../../../tests/reference/fibre_rules.json");
    let list: serde_json::Value = serde_json::from_str(list).unwrap();
    let rules = &Tables::shipped().rules;
    let is_verified = |section: &str, key: &str, article: &str| {
        let rules = list[section].as_array().unwrap().iter();
        let mut cited = rules.filter(|it| it[key].as_str().unwrap().starts_with(article));
        cited.any(|it| it["status"].as_str().unwrap().starts_with("verified"))
    };
    let (eu, us) = (&rules.eu, &rules.us);
    for (article, source) in [
        (&eu.descending.article, &eu.descending.source),
        (&eu.only_one.article, &eu.only_one.source),
        (&eu.other_one.article, &eu.other_one.source),
        (&eu.other_together.article, &eu.other_together.source),
        (&eu.virgin_wool.article, &eu.virgin_wool.source),
        (&eu.extraneous.article, &eu.extraneous.source),
        (&eu.decorative.article, &eu.decorative.source),
        (&eu.antistatic.article, &eu.antistatic.source),
        (&eu.animal_parts.article, &eu.animal_parts.source),
        (&eu.tolerance.article, &eu.tolerance.source),
    ] {
        let found = is_verified("EU_1007_2011", "article", article);
        assert_eq!(source.is_verified(), found, "{article}");
    }
    for (article, source) in [
        (&us.predominance.article, &us.predominance.source),
        (&us.named_from.article, &us.named_from.source),
        (&us.ornamentation.article, &us.ornamentation.source),
        (&us.only_one.article, &us.only_one.source),
        (&us.tolerance.article, &us.tolerance.source),
    ] {
        let found = is_verified("US_16CFR303_TFPIA", "section", article);
        assert_eq!(source.is_verified(), found, "{article}");
    }
}
