//! Care treatments by the meanings and in the order of ISO 3758: washing, bleaching, drying,
//! ironing, professional care. The registered symbols are not shipped: labels carry words.

use super::declare::{records, words};

words! {
    Wash "wash" {
        Normal95 "normal_95",
        Normal70 "normal_70",
        Normal60 "normal_60",
        Mild60 "mild_60",
        Normal50 "normal_50",
        Mild50 "mild_50",
        Normal40 "normal_40",
        Mild40 "mild_40",
        VeryMild40 "very_mild_40",
        Normal30 "normal_30",
        Mild30 "mild_30",
        VeryMild30 "very_mild_30",
        Hand "hand",
        No "no",
    }

    Bleach "bleach" {
        Any "any",
        /// Oxygen or other bleach without chlorine.
        Oxygen "oxygen",
        No "no",
    }

    Tumble "tumble" {
        /// 80 °C at the exhaust.
        Normal "normal",
        /// 60 °C at the exhaust.
        Low "low",
        No "no",
    }

    /// Drying in the air.
    AirDry "air-dry" {
        Line "line",
        LineShade "line_shade",
        LineDrip "line_drip",
        LineDripShade "line_drip_shade",
        Flat "flat",
        FlatShade "flat_shade",
        FlatDrip "flat_drip",
        FlatDripShade "flat_drip_shade",
    }

    Iron "iron" {
        /// 200 °C.
        High "high",
        /// 150 °C.
        Medium "medium",
        /// 110 °C, no steam.
        Low "low",
        No "no",
    }

    DryClean "dry-clean" {
        /// Tetrachloroethene and all solvents of hydrocarbon cleaning.
        P "p",
        PMild "p_mild",
        /// Hydrocarbons.
        F "f",
        FMild "f_mild",
        No "no",
    }

    WetClean "wet-clean" {
        Normal "normal",
        Mild "mild",
        VeryMild "very_mild",
        No "no",
    }
}

records! {
    record Care {
        wash: Option<Wash>,
        bleach: Option<Bleach>,
        tumble: Option<Tumble>,
        air_dry: Option<AirDry>,
        iron: Option<Iron>,
        dry_clean: Option<DryClean>,
        wet_clean: Option<WetClean>,
        /// What else there is to say: inside out, with like colours.
        note: String,
    }
}
