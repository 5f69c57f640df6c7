### Ready sentences that both sides read in their own language: phrase-<id> of exchange/phrase.rs.

phrase-group-question = सवाल
phrase-group-answer = जवाब
phrase-group-fix = क्या बदलना है
phrase-group-measuring = नापना
phrase-group-material = मटीरियल
phrase-group-date = तारीख़ें
phrase-group-shipping = भेजना

## Questions

phrase-ask-how-measured = { $item } कैसे नापा जाता है? कृपया दिखाएँ कि कहाँ से कहाँ तक।
phrase-ask-which-right = { $item }: ड्रॉइंग और लेख अलग हैं। कौन सा सही है?
phrase-ask-photo = कृपया { $item } का फ़ोटो भेजें।
phrase-ask-larger-drawing = कृपया { $item } की बड़ी ड्रॉइंग भेजें।
phrase-ask-value = { $item }, साइज़ { $size } का नाप साफ़ नहीं है। कितना है?
phrase-ask-stitch = { $item } के लिए कौन सी स्टिच सही है?
phrase-ask-allowance = { $item } में कितना सीम अलाउंस चाहिए?
phrase-ask-place = { $item } ठीक कहाँ लगेगा? किस सीम से नापना है?
phrase-ask-colour = { $item } के लिए कौन सा रंग रेफ़रेंस सही है?
phrase-ask-revision = क्या हम रिवीज़न { $revision } के अनुसार काम करें?
phrase-ask-order = क्या हम { $other } से पहले { $item } सिल सकते हैं?
phrase-ask-sample = कृपया { $item } का नमूना भेजें।

## Answers

phrase-answer-yes = हाँ।
phrase-answer-no = नहीं।
phrase-answer-spec = स्पेक सही है। कृपया उसी के अनुसार काम करें।
phrase-answer-drawing = ड्रॉइंग सही है। लेख बदला जाएगा।
phrase-answer-text = लेख सही है। ड्रॉइंग बदली जाएगी।
phrase-answer-value = { $item }, साइज़ { $size }: सही नाप { $value } है।
phrase-answer-next = अगले रिवीज़न में बदला जाएगा। कृपया रुकें।
phrase-answer-changed = रिवीज़न { $revision } में बदल गया है।
phrase-answer-go-on = कृपया काम जारी रखें। इससे काम नहीं रुकता।
phrase-answer-stop = यह निपटने तक कृपया { $item } का काम रोकें।
phrase-answer-understood = समझ गए। हम ऐसा ही करेंगे।
phrase-answer-allowance = { $item } पर { $value } सीम अलाउंस रखें।
phrase-answer-distance = { $item } को { $other } से { $value } दूर लगाएँ।

## What must change

phrase-fix-large = { $item } { $value } ज़्यादा बड़ा है। इसे स्पेक पर लाएँ।
phrase-fix-small = { $item } { $value } ज़्यादा छोटा है। इसे स्पेक पर लाएँ।
phrase-fix-density = { $item }: प्रति cm { $count } स्टिच रखें।
phrase-fix-twisted = { $item } की सीम मुड़ी हुई है। सपाट सिलें।
phrase-fix-puckers = { $item } की सीम सिकुड़ रही है। धागे का तनाव जाँचें।
phrase-fix-skipped = { $item } पर स्टिच छूटी है।
phrase-fix-ends = { $item } पर धागे के सिरे काटें।
phrase-fix-bartack = { $item } पर बारटैक नहीं है।
phrase-fix-place = { $item } ग़लत जगह पर है। { $value } खिसकाएँ।
phrase-fix-turned = { $item } उल्टा सिला है।
phrase-fix-sides = { $item } पर बाएँ-दाएँ में { $value } का अंतर है। बराबर करें।
phrase-fix-colour = { $item } का रंग मंज़ूर रंग नहीं है।
phrase-fix-print = { $item } का प्रिंट फट रहा है या उखड़ रहा है।
phrase-fix-stain = { $item } पर दाग़ हैं। पीस साफ़ रखें।
phrase-fix-label = { $item } पर लिखा ग़लत है। स्पेक का लेख इस्तेमाल करें।

## Measuring

phrase-measured-says = { $item }: नापा { $value }, स्पेक { $spec }।
phrase-measured-size = { $item }, साइज़ { $size }: नापा { $value }।
phrase-measured-shrinks = { $item } धुलाई में { $percent } % सिकुड़ता है।
phrase-measured-grows = { $item } धुलाई में { $percent } % बढ़ता है।
phrase-measure-again = कृपया { $item } फिर नापें, सपाट रखकर, बिना खींचे।
phrase-measured-half = { $item } सपाट नापा गया: आधा घेरा।
phrase-measured-stretched = { $item }, खींचकर: नापा { $value }।
phrase-measured-allowance = पैटर्न में { $item } पर { $value } और सीम अलाउंस चाहिए।
phrase-measured-tolerance = { $item } का टॉलरेंस नहीं रखा जा सकता। हम { $value } रख सकते हैं।
phrase-measured-vary = पीसों में आपस में { $item } पर { $value } का अंतर है।

## Materials

phrase-material-instead = क्या हम { $other } की जगह { $material } इस्तेमाल कर सकते हैं?
phrase-material-none = { $material } उपलब्ध नहीं है।
phrase-material-arrives = { $material } { $date } को आएगा।
phrase-material-shade = { $material } का शेड मंज़ूर लैब डिप से अलग है।
phrase-material-dip-sent = { $material } का लैब डिप { $date } को भेजा गया।
phrase-material-dip-approve = कृपया { $material } का लैब डिप मंज़ूर करें।
phrase-material-minimum = { $material } का न्यूनतम ऑर्डर हमारी ज़रूरत से ज़्यादा है।
phrase-material-width = { $material } की चौड़ाई { $value } है।
phrase-material-shrinks = { $material } { $percent } % सिकुड़ता है।
phrase-material-keep = नहीं। स्पेक के अनुसार { $material } इस्तेमाल करें।
phrase-material-take = हाँ। आप { $material } इस्तेमाल कर सकते हैं।
phrase-material-short = { $material }: { $count } कम हैं।

## Dates

phrase-date-ready = सैंपल { $date } को तैयार होंगे।
phrase-date-late = हमें { $count } दिन की देर है।
phrase-date-need = हमें { $date } तक सैंपल चाहिए।
phrase-date-answer = कृपया { $date } तक जवाब दें। उसके बाद काम रुक जाएगा।
phrase-date-cutting = कटाई { $date } को शुरू होगी।
phrase-date-sewn = सिलाई { $date } को पूरी होगी।
phrase-date-closed = फ़ैक्टरी { $date } से { $until } तक बंद है।
phrase-date-confirm = कृपया यह तारीख़ पक्की करें: { $date }।

## Shipping

phrase-ship-sent = { $date } को { $count } पीस भेजे गए।
phrase-ship-arrived = { $date } को { $count } पीस पहुँचे।
phrase-ship-cartons = कार्टन की संख्या: { $count }।
phrase-ship-missing = पार्सल में { $count } पीस कम हैं।
phrase-ship-damaged = पार्सल ख़राब हालत में पहुँचा।
phrase-ship-address = कृपया पार्सल का पता पक्का करें।
phrase-ship-papers = कृपया कस्टम के काग़ज़ भेजें।
