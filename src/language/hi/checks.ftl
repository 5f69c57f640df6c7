### Readiness checks: one sentence a code, check-<code>. It names the item and says what to do.

## Anywhere


## Header

check-markets-none = नहीं बताया कि गारमेंट कहाँ बिकेगा। बाज़ार चुनें: लेबल और सुरक्षा की जाँच इसी पर निर्भर है।
check-wearer-missing = नहीं बताया कि गारमेंट किसके लिए है। चुनें: सुरक्षा की जाँच इसी पर निर्भर है।
check-languages-missing = लेबल की भाषाएँ नहीं बताईं। लिखें: हर बाज़ार अपनी भाषा चाहता है।
check-exemption-void = “{ $code }” से छूट का कोई असर नहीं: कारण और नाम चाहिए, और केवल डोरी की मनाही ही हटाई जा सकती है। पूरा करें या हटाएँ।

## Sizes

check-size-age-missing = यह बच्चे का कपड़ा है, और इन साइज़ों में न उम्र है न लंबाई: { $sizes }। कोई एक लिखें: सुरक्षा की जाँच इसी पर निर्भर है।

## Drawings


## Points of measure


## Grade rules

check-grade-reverses = { $letter } { $name }: नाप कुछ साइज़ों में बढ़ता है और कुछ में घटता है; साइज़ { $size } पर पलटता है। क्या यही चाहिए?
check-tolerance-overlaps = { $letter } { $name }: यह ज़रूरी पॉइंट है, और साइज़ { $from } का पीस { $to } मान लिया जा सकता है: साइज़ों में { $step } का अंतर है, और टॉलरेंस −{ $minus } और +{ $plus } हैं। टॉलरेंस घटाएँ।
check-step-coarse = { $letter } { $name }: पूर्णांकन { $step } टॉलरेंस के आधे से ज़्यादा है (−{ $minus }, +{ $plus })। छोटा पूर्णांकन या बड़ा टॉलरेंस रखें।
check-steps-uneven = { $letter } { $name }: हर साइज़ में { $exact } का अंतर है, पर पूर्णांकन से साइज़ { $size } तक { $before } और बाद में { $after } हो जाता है। छोटा पूर्णांकन या दूसरा ग्रेड रखें।
check-grade-half-or-full = { $letter } { $name }: पहले साइज़ से आख़िरी तक पूरे घेरे में { $growth } बढ़ता है, ऐसे पॉइंट लगभग { $usual }। क्या ग़लती से आधा या पूरा लिखा गया?
check-value-not-positive = { $letter } { $name }: साइज़ { $size } का नाप { $value } आता है। नाप शून्य से ज़्यादा होता है: नाप या ग्रेड सुधारें।
check-lengths-partial = { $letter } { $name } कुछ लंबाइयों के साथ बदलता है, और { $length } के बारे में कुछ नहीं बताया। जो जुड़ता है लिखें; 0 चलेगा।

## Relations between measurements

check-stretched-below-relaxed = { $item }: साइज़ { $size } में बिना खींचे { $relaxed } और खींचकर केवल { $stretched } है। कोई एक सुधारें।
check-neck-under-head = { $item }: साइज़ { $size } में गला चारों ओर { $opening } खुलता है, और सिर { $girth } है। सिर से न निकले, जाँचें।
check-cuff-under-hand = { $item }: साइज़ { $size } में कफ़ चारों ओर { $opening } खुलता है, और हाथ { $girth } है। हाथ न निकले, जाँचें।
check-zip-not-opening = { $item }: साइज़ { $size } में ज़िप { $length } लंबी है, और उसकी ओपनिंग { $point } { $opening } है। कोई एक सुधारें।
check-cord-under-channel = { $item }: साइज़ { $size } में डोरी { $length } लंबी है, और उसका चैनल { $point } चारों ओर { $channel } है। डोरी लंबी करें।
check-rise-and-inseam = { $item }: साइज़ { $size } में राइज़ { $rise } और इनसीम { $inseam } मिलकर आउटसीम { $outseam } नहीं बनते। तीनों जाँचें।
check-points-usual = { $kind }: ये पॉइंट आम तौर पर होते हैं, और किसी पॉइंट को इनमें से नहीं बताया: { $missing }। जोड़ें, या बताएँ कि आपके पॉइंट क्या हैं।
check-dimension-missing = { $item }: इसके साथ ये भी चाहिए, और किसी पॉइंट को इनमें से नहीं बताया: { $missing }। जोड़ें।

## Parts and colourways

check-parts-none = कोई पार्ट नहीं है। जिनका अपना रंग हो सकता है लिखें: मुख्य कपड़ा, कफ़, धागा।
check-colourways-none = कोई रंग संयोजन नहीं है। कम से कम एक लिखें।

## Materials

check-claim-hundred = { $item } पर 100 %, शुद्ध या पूरा लिखा है, और { $material } में दूसरा रेशा है। EU और US ऐसे शब्द केवल एक रेशे के लिए मानते हैं। बदलें।
check-fibre-twice = { $item }: संरचना में एक रेशा दो बार है। दोनों जोड़ें।
check-virgin-wool = { $item }: इस मिश्रण में वर्जिन ऊन है। EU यह नाम तभी मानता है जब वह कम से कम 25 % हो और साथ में केवल एक और रेशा हो (विनियम 1007/2011, अनुच्छेद 8)। जाँचें।
check-mass-disagrees = { $item }: { $declared } g/m² बताया गया, और धागों से { $computed } g/m² आता है। दोनों जाँचें।
check-zip-size-missing = { $item }: ज़िप की लंबाई नहीं है। लिखें, या वह पॉइंट चुनें जिसे यह बंद करती है।
check-minimum-unmet = { $item }: { $colourway } को { $needed } चाहिए, और न्यूनतम ऑर्डर { $minimum } है (इकाई: { $unit })। सप्लायर से पूछें, या ज़्यादा मँगाएँ।

## Construction

check-stitch-unknown = { $item }: { $stitch } ISO 4915 की स्टिच तालिका में नहीं है। जाँचें।
check-seam-code-unlike = { $item }: { $code } ISO 4916 का संकेत नहीं है, या चुने गए वर्ग से अलग है। दोनों जाँचें।

## Artwork

check-artwork-file-missing = { $item }: मूल फ़ाइल नहीं है। अपलोड करें।
check-artwork-coarse = { $item }: असली आकार में तस्वीर में प्रति इंच { $dpi } बिंदु हैं; आम तौर पर { $wanted } होते हैं। और बारीक अपलोड करें।
check-artwork-live-text = { $item }: मूल में लाइव टेक्स्ट या लिंक की तस्वीरें हैं, जो कहीं और अलग दिख सकती हैं। लेख को आउटलाइन बनाएँ और तस्वीरें फ़ाइल में डालें।
check-text-too-small = { $item }: सबसे छोटे अक्षर { $height } ऊँचे हैं। { $method } आम तौर पर { $least } से साफ़ आता है। बड़ा करें।

## Labels and care

check-care-customary = लेबल पर देखभाल के निर्देश नहीं हैं। EU और UK नहीं माँगते, पर ख़रीदार चाहते हैं। देखभाल और उसका लेबल लिखें।
check-care-harsh = { $treatments }: लेबल इन मटीरियल की सहन-शक्ति से ज़्यादा की अनुमति देता है: { $materials }। हल्की देखभाल चुनें।
check-label-size-missing = { $item }: { $missing } नहीं है। लिखें।
check-label-place-missing = { $item }: सीम से कितनी दूर, नहीं बताया। दूरी लिखें।
check-label-language-missing = { $item } में इस भाषा का लेख नहीं है: { $language }। लिखें।

## Packing

check-ratio-remainder = { $item }: एक पैक में { $pack } पीस हैं, और { $colourway } के { $pieces }, इसलिए { $left } बचते हैं। कोई एक बदलें।

## Safety: these caution. The text of the rule, local law and a licensed laboratory decide.

check-cord-exempted = { $item }: बच्चे के कपड़े के हुड या गले में डोरी है, और एक नियम हटाया गया है। { $reasons }। लाइसेंस वाली प्रयोगशाला से जँचवाएँ।
check-cord-free-ends-eu = { $item }: बड़े बच्चे के कपड़े के हुड या गले में डोरी, साइज़ { $sizes }। { $rule } वहाँ खुले सिरे मना करता है। हटाएँ, या बताएँ कि नहीं हैं।
check-cord-free-missing = { $item }: बच्चे के कपड़े की इस डोरी का { $missing } नहीं है। लिखें: नियम इसी पर निर्भर हैं।
check-cord-long-us = { $item }: डोरी { $free } बाहर लटकती है, साइज़ { $sizes }। { $rule } कपड़ा पूरा चौड़ा होने पर { $most } की अनुमति देता है। छोटा करें।
check-cord-toggled-us = { $item }: डोरी में टॉगल, टिप या गाँठ है, साइज़ { $sizes }। { $rule } कमर और हेम पर इनकी अनुमति नहीं देता। हटाएँ।
check-cord-loose-us = { $item }: डोरी खींचकर निकल सकती है, साइज़ { $sizes }। { $rule } पक्का करने के लिए बारटैक माँगता है। जोड़ें।
check-cord-long-eu = { $item }: डोरी { $free } बाहर लटकती है, साइज़ { $sizes }। याददाश्त से, बिना मिलाए, { $rule } वहाँ { $most } की अनुमति देता है। मानक में अंक पढ़ें, ज़रूरत हो तो छोटा करें।
check-cord-back-eu = { $item }: बच्चे के कपड़े की पीठ पर डोरी, साइज़ { $sizes }। याददाश्त से, बिना मिलाए, { $rule } वहाँ केवल बाँधने वाली बेल्ट की अनुमति देता है। मानक में पढ़ें।
check-evidence-small-parts = { $item } निकल सकता है, और साइज़ { $sizes } 3 साल से छोटे बच्चों के लिए हैं। { $rule } छोटे हिस्सों की जाँच माँगता है। रिपोर्ट लिखें।
check-evidence-flammability = { $item }: जलने की गति की जाँच नहीं बताई। { $rule } माँग सकता है। रिपोर्ट लिखें, या बताएँ कि क्यों नहीं है।
check-evidence-sleepwear = { $item }: बच्चों के रात के कपड़े, साइज़ { $sizes }, और जलने की जाँच नहीं बताई। { $rule } माँगता है। रिपोर्ट लिखें।
check-evidence-nickel = { $item } त्वचा से लगने वाली धातु है, और निकल की जाँच नहीं बताई। { $rule } इसकी सीमा रखता है। रिपोर्ट लिखें।
check-evidence-azo-dyes = { $item } रंगा हुआ है, और एज़ो रंगों की जाँच नहीं बताई। { $rule } इनकी सीमा रखता है। रिपोर्ट लिखें।
check-evidence-lead = { $item }: बच्चों के उत्पाद का ट्रिम, साइज़ { $sizes }, और सीसे की जाँच नहीं बताई। { $rule } इसकी सीमा रखता है। रिपोर्ट लिखें।
