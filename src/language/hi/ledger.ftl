### Who did what when.

ledger-title = बही
ledger-what = इस स्टाइल के साथ जो कुछ किया गया। यहाँ कुछ भी बदला या हटाया नहीं जाता: हर प्रविष्टि में पिछली का हैश है।
ledger-part = आप अपनी फ़ैक्टरी से जुड़ी प्रविष्टियाँ देखते हैं; बाकी के नंबर छोड़ दिए गए हैं।
ledger-length = प्रविष्टियाँ
ledger-end = आख़िरी का हैश
ledger-with = { $factory } के साथ
ledger-brand-only = केवल ब्रांड के लिए
ledger-program = प्रोग्राम
ledger-each = हर नाप
ledger-none = अभी कुछ नहीं किया गया।

## What was done

deed-create = { $who } ने स्टाइल शुरू किया।
deed-publish = { $who } ने रिवीज़न { $revision } प्रकाशित किया।
deed-withdraw = { $who } ने रिवीज़न { $revision } वापस लिया।
deed-share = { $who } ने स्टाइल { $factory } के साथ साझा किया।
deed-unshare = { $who } ने { $factory } के साथ साझा बंद किया।
deed-acknowledge = { $who } ने रिवीज़न { $revision } की पावती दी।
deed-ask = { $who } ने उठाया: { $kind }, { $item }, रिवीज़न { $revision }।
deed-message = { $photos ->
    [0] { $who } ने लिखा: { $kind }, { $item }।
   *[other] { $who } ने लिखा: { $kind }, { $item }, { $photos } फ़ोटो के साथ।
}
deed-thread = { $move ->
    [agree] { $who } सहमत हुए: { $kind }, { $item }।
    [reopen] { $who } ने फिर खोला: { $kind }, { $item }।
    [grant] { $who } ने छूट दी: { $kind }, { $item }।
    [verify] { $who } ने सैंपल पर ठीक हुआ देखा: { $kind }, { $item }।
   *[close] { $who } ने बंद किया: { $kind }, { $item }।
}
deed-thread-changed = { $who } ने रिवीज़न { $revision } में लिया: { $kind }, { $item }।
deed-round = राउंड { $number } ({ $kind })
deed-round-request = { $who } ने { $round } माँगा: { $count } पीस, रिवीज़न { $revision } के अनुसार।
deed-round-start = { $who } ने { $round } शुरू किया।
deed-round-dispatch = { $who } ने { $round } के पीस भेजे।
deed-round-receive = { $who } को { $round } के पीस मिले।
deed-round-measured = { $who } ने { $round } नापना पूरा किया।
deed-round-continue = रिवीज़न { $revision } होने पर भी { $who } ने { $round } जारी रखा।
deed-measure = { $who } ने { $item } पर { $value } नापा, { $round } का पीस { $piece }।
deed-measure-many = { $who } ने { $round } में { $count } नाप लिए।
deed-skip = { $who } ने { $item } नहीं नापा, { $round } का पीस { $piece }: { $reason }।
deed-photograph = { $who } ने { $round } के पीस { $piece } की एक तस्वीर जोड़ी।
deed-decide = { $who } ने { $round } पर फ़ैसला किया: { $outcome }।
deed-submit = { $who } ने { $item } ({ $kind }) का नमूना { $option } दिया।
deed-approve = { $verdict ->
    [approved] { $who } ने { $item } ({ $kind }) का नमूना { $option } मंज़ूर किया।
   *[rejected] { $who } ने { $item } ({ $kind }) का नमूना { $option } नामंज़ूर किया।
}
deed-seal = { $who } ने { $round } के पीस सील किए: { $count }।
deed-inspection-begin = { $who } ने बल्क जाँच { $number } शुरू की। लॉट में पीस: { $count }।
deed-inspect = { $who } ने बल्क जाँच { $number } में पीस { $piece } जाँचा।
deed-inspect-many = { $who } ने बल्क जाँच { $number } में पीस जाँचे: { $count }।
deed-inspection-conclude = { $who } ने बल्क जाँच { $number } का निष्कर्ष निकाला: { $outcome }।
deed-inspection-decide = { $who } ने बल्क जाँच { $number } पर फ़ैसला किया: { $decision }।
deed-sign-revision = { $who } ने रिवीज़न { $revision } पर हस्ताक्षर किए।
deed-sign-round = { $who } ने { $round } पर हस्ताक्षर किए।
deed-sign-seal = { $who } ने { $round } की सील पर हस्ताक्षर किए।
deed-translate = { $count ->
    [one] { $who } ने { $count } पाठ का { $language } में अनुवाद किया।
   *[other] { $who } ने { $count } पाठों का { $language } में अनुवाद किया।
}
deed-translate-message = { $who } ने { $item } पर { $kind } के एक संदेश के साथ { $language } में अनुवाद रखा।
deed-erase = किसी का नाम, संदेश और फ़ोटो मिटाए गए। उनके हैश बने रहते हैं।
