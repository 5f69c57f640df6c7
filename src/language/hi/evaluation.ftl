### The evaluation of a sample: why its measurements are off, and what to do.

## Where

evaluation-fabric-along = { $fabric }, { $direction }
evaluation-some-points = { $count } पॉइंट
evaluation-whole-garment = पूरा गारमेंट

## Causes

evaluation-proportional-shift = { $place }: लंबे और छोटे पॉइंट एक ही अनुपात में हटे हैं, { $share } %। कपड़ा सिकुड़ा या खिंचा है, या पैटर्न में इसका हिसाब ग़लत है। वहाँ पैटर्न × { $factor } करें।
evaluation-constant-error = { $place }: लंबा हो या छोटा, हर पॉइंट एक ही लंबाई से हटा है, { $by }। सीम अलाउंस और कटाई देखें, या जिस फ़ीते से नापा गया।
evaluation-single-point = { $points }: साइज़ { $size } में { $by } हटा है, और कोई दूसरी वजह नहीं मिलती। देखें कि यह पॉइंट कैसे कटता और सिलता है।
evaluation-base-pattern = { $points }: नापे गए हर साइज़ में { $by } हटा है। वहाँ बेस पैटर्न सुधारें।
evaluation-grading = { $place }: बेस साइज़ से जितना दूर, उतना ज़्यादा हटा; अंतर चार्ट से { $share } % अलग हैं। ग्रेडिंग सुधारें।
evaluation-size-pattern = { $place }: केवल साइज़ { $size } में { $by } हटा है। इस साइज़ का पैटर्न देखें।
evaluation-one-piece = { $points }: केवल पीस { $pieces } पर { $by } हटा है। फिर नापें; वही रहे तो यह पीस अलग तरह सिला है।
evaluation-unsteady = { $points }: साइज़ { $size } के पीसों में आपस में नापने की चूक से ज़्यादा अंतर है। सिलाई देखें, या नापने का तरीका तय करें।
evaluation-wrong-label = पीस { $pieces } पर साइज़ { $size } है और नाप { $really } का है। उसका लेबल देखें, या किस पैटर्न से कटा।
evaluation-swapped-sizes = पीस { $pieces } पर एक-दूसरे का साइज़ है: पहले पर { $size } है और नाप { $really } का है। उनके लेबल बदलें।
evaluation-doubled = पीस { $pieces }, { $points }: होना चाहिए उससे लगभग दोगुना। आधे की जगह पूरा घेरा लिखा गया: फिर नापें।
evaluation-halved = पीस { $pieces }, { $points }: होना चाहिए उससे लगभग आधा। पूरे घेरे की जगह आधा लिखा गया: फिर नापें।
evaluation-cm-as-inch = पीस { $pieces }, { $points }: इंच की जगह सेंटीमीटर लिखे गए।
evaluation-inch-as-cm = पीस { $pieces }, { $points }: सेंटीमीटर की जगह इंच लिखे गए।
evaluation-ten-times = पीस { $pieces }, { $points }: होना चाहिए उससे दस गुना। दशमलव चिह्न देखें।
evaluation-tenth = पीस { $pieces }, { $points }: होना चाहिए उसका दसवाँ हिस्सा। दशमलव चिह्न देखें।
evaluation-swapped-points = पीस { $pieces }: { $points } के नाप एक-दूसरे की जगह हैं।

## Figures

evaluation-rests-on-one = यह एक नाप पर टिका है।
evaluation-rests-on = यह { $readings } नापों पर टिका है, जिनमें { $same } एक ही ओर हटे हैं। आधे { $before } से ज़्यादा हटे थे; इसे घटाकर { $left } बचता है।

## What is not a cause

evaluation-again = पीस { $piece }, { $point }: टॉलरेंस से बाहर, पर नापने की चूक से ज़्यादा नहीं। फिर नापें।
evaluation-dispute = पीस { $piece }, { $point }: { $one } ने { $least } नापा और { $other } ने { $most }। पहले नापने का तरीका तय करें: { $allowed } तक का अंतर ठीक है।
evaluation-few-points = { $place }: पर्याप्त आँकड़े नहीं। वहाँ { $have } पॉइंट नापे गए, कपड़ा बदला या नहीं यह बताने को { $need } चाहिए।
evaluation-one-size = पर्याप्त आँकड़े नहीं: केवल साइज़ { $size } नापा गया, इसलिए पैटर्न और ग्रेडिंग अलग नहीं किए जा सकते।
evaluation-one-piece-only = पर्याप्त आँकड़े नहीं: साइज़ { $size } का एक ही पीस नापा गया, इसलिए सिलाई और पैटर्न अलग नहीं किए जा सकते।
evaluation-watch = { $out ->
    [0] { $point }: पहले फ़ेल हुआ ({ $rounds })। अब टॉलरेंस में है: ध्यान रखें।
   *[other] { $point }: पहले फ़ेल हुआ ({ $rounds })। { $measured } में से { $out } पर फिर बाहर है।
}
evaluation-repeat-assumed = कुछ भी दो बार नहीं नापा गया। मान लिया गया है कि नाप { $deviation } के भीतर दोहराया जा सकता है।
evaluation-repeat-measurers = कई लोगों के नापे { $count } पॉइंट के आधार पर, नाप { $deviation } के भीतर दोहराया जा सकता है।
evaluation-repeat-pieces = एक साइज़ के कई पीसों में मौजूद { $count } पॉइंट के आधार पर, नाप { $deviation } के भीतर दोहराया जा सकता है।
evaluation-wash = { $place }: धुलाई से { $percent } %। वहाँ पैटर्न × { $factor } करें।
evaluation-wash-little = { $place }: धुलाई से { $percent } %, जो नापने की चूक से अधिक नहीं है।

## On a round's page

evaluation-title = नाप क्या बताते हैं
evaluation-no-cause = कोई कारण नहीं बताया जाता। कुछ बाहर हो तो वह नापने की चूक से ज़्यादा नहीं, या बताने को आँकड़े कम हैं।
evaluation-points-shown = कहाँ दिखता है
evaluation-suggested = पैटर्न का सुझाया सुधार
evaluation-agree = पहले नापने का तरीका तय करें
evaluation-again-title = फिर नापें
evaluation-lacks-title = पर्याप्त आँकड़े नहीं
evaluation-watch-title = नज़र रखें: पिछले राउंड में सही नहीं था
evaluation-watch-word = नज़र रखें
evaluation-strips = पॉइंट के हिसाब से अंतर
evaluation-strips-how = छायादार पट्टी टॉलरेंस है, उसके भीतर की रेखा स्पेक है। ● भीतर, ▲ ज़्यादा, ▼ कम।
evaluation-strips-sides = खोखले चिह्न फ़ैक्टरी के नाप हैं, भरे हुए ब्रांड के।
evaluation-strips-beyond = चिह्न के पास तीर: चित्र की सीमा से बाहर।
evaluation-within = { $count } पॉइंट टॉलरेंस के भीतर
evaluation-by-size = साइज़ के हिसाब से अंतर
evaluation-by-size-how = रेखा हर साइज़ के औसत अंतर को जोड़ती है। समतल रेखा: पैटर्न। चढ़ती या उतरती रेखा: ग्रेडिंग।
evaluation-steps = साइज़ के बीच के अंतर
evaluation-from-to = से, तक
evaluation-asked = चार्ट के अनुसार
evaluation-got = नापा गया
evaluation-more = फ़र्क़
