### Sample rounds and measuring.

rounds-title = { $kind }, सैंपल राउंड { $number }
rounds-revision = रिवीज़न
rounds-factory = फ़ैक्टरी
rounds-asked = माँगा गया
rounds-missing = बाकी
rounds-out = टॉलरेंस से बाहर
rounds-critical-out = ज़रूरी पॉइंट बाहर
rounds-values = नापे गए
rounds-measured-of = { $count } में से { $measured }

## Asking for a round

rounds-new-title = सैंपल माँगें
rounds-new-bound = फ़ैक्टरी ये सैंपल रिवीज़न { $revision } के अनुसार बनाएगी।
rounds-choose = फ़ैक्टरी चुनें
rounds-factory-missing = फ़ैक्टरी चुनें।
rounds-kind = सैंपल किसलिए हैं?
rounds-kind-proto-help = पहले पीस: क्या हम एक-दूसरे को समझ रहे हैं?
rounds-kind-fit-help = क्या फ़िट सही है, और नाप ठीक हैं?
rounds-kind-size-set-help = हर साइज़ का एक पीस: ग्रेडिंग सही है?
rounds-kind-pre-production-help = जैसे ऑर्डर बनेगा: असली मटीरियल, असली लाइन।
rounds-kind-top-of-production-help = ऑर्डर के ही पहले पीस।
rounds-pieces = हर साइज़ के कितने पीस?
rounds-count-wrong = 0 से { $most } तक का पूरा अंक लिखें।
rounds-new-button = सैंपल माँगें
rounds-back-to-style = स्टाइल पर वापस
rounds-not-shared = यह स्टाइल अभी किसी फ़ैक्टरी के साथ साझा नहीं है। पहले साझा करें।
rounds-none-current = कोई मौजूदा रिवीज़न नहीं है। पहले प्रकाशित करें।

## What is next

rounds-next-start = इन सैंपलों पर काम शुरू करें।
rounds-next-start-other = आपका मर्चेंडाइज़र काम शुरू करेगा।
rounds-next-start-factory = आगे { $org } काम शुरू करेगा।
rounds-next-measure = पीस नापें: { $count } नाप बाकी।
rounds-next-dispatch = सब नाप लिया गया। पीस भेजें, फिर यहाँ बताएँ।
rounds-next-dispatch-other = सब नाप लिया गया। मर्चेंडाइज़र पीस भेजेगा।
rounds-next-in-work = { $org } पीस बना और नाप रहा है।
rounds-next-receive = पीस रास्ते में हैं। पहुँचने पर बताएँ।
rounds-next-on-the-way = पीस रास्ते में हैं। पहुँचने पर ब्रांड बताएगा।
rounds-next-check = पीस नापें, या फ़ैक्टरी के नाप जाँचें। फिर बताएँ कि नापना पूरा हुआ।
rounds-next-check-other = ब्रांड पीस जाँच रहा है।
rounds-next-decide = इन सैंपलों पर फ़ैसला करें।
rounds-next-decide-other = आगे ब्रांड फ़ैसला करेगा।
rounds-next-cancelled = यह राउंड रद्द हुआ। अब कुछ करना बाकी नहीं।
rounds-next-sign = फ़ैसला पढ़ें, फिर हस्ताक्षर करें।
rounds-next-sign-blocked = एक सवाल खुला है। उसे निपटाएँ, फिर फ़ैसले पर हस्ताक्षर करें।
rounds-next-sign-other = अभी हस्ताक्षर नहीं किए: { $side }।
rounds-next-done = दोनों ने हस्ताक्षर कर दिए। अब कुछ करना बाकी नहीं।

rounds-move-start = काम शुरू करें
rounds-move-dispatch = पीस भेज दिए
rounds-move-receive = पीस पहुँच गए
rounds-move-finish-measuring = नापना पूरा हुआ
rounds-measure = नापें
rounds-correct = नाप सुधारें
rounds-sign = हस्ताक्षर पर जाएँ
rounds-see-open = देखें कि क्या खुला है
rounds-unfinished = { $count } नाप बाकी हैं।
rounds-unfinished-what = इन्हें किसी ने नहीं नापा। नापें, या इनके बिना आगे बढ़ें।
rounds-unfinished-piece = पीस { $number }, साइज़ { $size }
rounds-dispatch-anyway = पीस इन नापों के बिना भेजे गए
rounds-finish-anyway = फिर भी पूरा करें

## A newer revision

rounds-newer = रिवीज़न { $revision } आ चुका है।
rounds-newer-bound = ये सैंपल रिवीज़न { $revision } के अनुसार बने हैं।
rounds-newer-wait = आगे चलेंगे या नहीं, ब्रांड बताएगा।
rounds-newer-changes = देखें कि क्या बदला
rounds-continue = रिवीज़न { $revision } के साथ जारी रखें
rounds-restart = रिवीज़न { $revision } के साथ फिर शुरू करें
rounds-restart-sure = यह राउंड रद्द होकर समाप्त होगा और वैसा ही रहेगा। इसमें जो नापा गया वह रखा जाएगा। वही पीस रिवीज़न { $revision } के साथ तुरंत फिर माँगे जाते हैं।
rounds-restart-reason = रिवीज़न { $revision } के साथ फिर शुरू किया गया।

## Pieces and points

rounds-pieces-by-points = नाप
rounds-caption = इकाई: { $unit }
rounds-pick-piece = पीस
rounds-piece = पीस { $number }
rounds-letter = अक्षर
rounds-point = नाप का पॉइंट
rounds-spec = स्पेक
rounds-critical = ज़रूरी
rounds-critical-line = { $letter } { $name } ज़रूरी पॉइंट है, और { $count } पीस में टॉलरेंस से बाहर है।
rounds-not-yet = अभी नहीं
rounds-over = टॉलरेंस से ज़्यादा
rounds-under = टॉलरेंस से कम
rounds-apart = दोनों के नाप में बहुत फ़र्क है: पहले नापने का तरीका तय करें।
rounds-legend = ▲ टॉलरेंस से ज़्यादा, ▼ टॉलरेंस से कम।
rounds-legend-both = जहाँ ब्रांड ने नापा है, वहाँ उसका नाप मान्य है।

## Deciding

rounds-decide = फ़ैसला
rounds-stop = यह राउंड रोकें
rounds-outcome = आपका फ़ैसला क्या है?
rounds-outcome-missing = फ़ैसला चुनें।
rounds-approved-help = सैंपल सही हैं। कोई बदलाव नहीं।
rounds-approved-with-changes-help = नीचे के बदलावों को छोड़कर सही। हर एक अगले रिवीज़न का ज़रूरी सुधार बनेगा।
rounds-remake-help = ये सैंपल फिर से बनाएँ। कारण लिखें।
rounds-cancelled-help = बिना नतीजे के यह राउंड बंद करें। कारण लिखें।
rounds-changes = बदलाव
rounds-changes-help = केवल बदलाव के साथ मंज़ूरी के लिए। जिसे बदलना ज़रूरी नहीं, उसका निशान हटाएँ।
rounds-change-text = { $letter } पर क्या बदलना है
rounds-other-item = एक और बदलाव
rounds-no-item = कोई नहीं
rounds-other-text = वहाँ क्या बदलना है
rounds-reason = कारण
rounds-reason-help = दोनों पक्ष इसे पढ़ेंगे। फिर से बनाने या रद्द करने के लिए कारण ज़रूरी है।
rounds-decide-button = फ़ैसला करें
rounds-suggestion = { $pieces } इसे { $tolerance } { $unit } के भीतर लाएँ।
rounds-suggestion-piece = पीस { $piece }, साइज़ { $size }: नापा { $measured }, स्पेक { $spec } ({ $off })।

rounds-decided = फ़ैसला
rounds-reason-erased = (कारण मिटाया गया)
rounds-must-fixes = इस फ़ैसले के ज़रूरी सुधार
rounds-another = एक और राउंड माँगें

## Signing

sign-title = हस्ताक्षर
sign-signed = हस्ताक्षर हो गए
sign-not-yet = अभी हस्ताक्षर नहीं
sign-fingerprint = फ़िंगरप्रिंट
sign-as = मैं { $name }, { $role } के रूप में हस्ताक्षर करता/करती हूँ
sign-button = हस्ताक्षर करें
sign-blocked = आप अभी हस्ताक्षर नहीं कर सकते
sign-local = { $time }, हस्ताक्षर करने वाले का समय
sign-to-acknowledge = पावती दें
sign-to-thread = { $kind } खोलें: { $item }

## History

rounds-history = इतिहास
rounds-did-request = ने रिवीज़न { $revision } के { $count } पीस माँगे।
rounds-did-start = ने काम शुरू किया।
rounds-did-dispatch = ने पीस भेजे।
rounds-did-receive = को पीस मिले।
rounds-did-finish-measuring = ने बताया कि नापना पूरा हुआ।
rounds-did-continue = इन्हीं सैंपलों के साथ जारी है। रिवीज़न { $revision } इन्हें नहीं बदलता।
rounds-did-measure = ने { $count } नाप लिए।
rounds-did-decide = ने फ़ैसला किया: { $outcome }।
rounds-did-sign = ने फ़ैसले पर हस्ताक्षर किए।
rounds-did-must-fix = ने ज़रूरी सुधार दिया: { $letter } { $name }।

## Measuring on a phone

rounds-measure-title = पीस { $piece } नापें
rounds-missing-count = { $count ->
    [0] सब नाप लिया
   *[other] { $count } बाकी
}
rounds-back-to-round = { $kind }, राउंड { $number } पर वापस
rounds-progress = इस पीस के नापे गए पॉइंट
rounds-waiting = अभी नहीं भेजा गया:
rounds-drop = हटा दें
rounds-place = { $count } में से { $place }
rounds-how = { $start } से { $end } तक।
rounds-stretched = खींचकर।
rounds-half = आधा
rounds-half-how = सपाट रखकर
rounds-full = पूरा
rounds-full-how = चारों ओर
rounds-length = लंबाई
rounds-value = नाप
rounds-save-next = सहेजें, अगला
rounds-kept = यह पन्ना बिना कनेक्शन के भी फिर खुलेगा।
rounds-plain = HTTPS के बिना यह पन्ना कनेक्शन के बिना फिर नहीं खुल सकता। आप जो लिखते हैं वह फिर भी रखा जाता है।
rounds-save-anyway = सही है: सहेजें
rounds-back = पिछला
rounds-next = अगला
rounds-skip = छोड़ें
rounds-skip-why = क्यों नहीं नापा?
rounds-skip-later = बाद में: अगला बिंदु
rounds-skipped = छोड़ा गया:
rounds-state-spec = स्पेक के अनुसार
rounds-state-is-spec = स्पेक के अंक
rounds-measure-in = नापें:
rounds-delete = मिटाएँ
rounds-not-positive = नाप शून्य से ज़्यादा होना चाहिए।
rounds-key-used = यह फ़ॉर्म पहले दूसरे नाप के साथ भेजा गया था। नाप फिर देखें, फिर सहेजें।

rounds-ask-doubled = { $value } स्पेक का लगभग दोगुना है। क्या यह पूरा घेरा है? फिर से नापें।
rounds-ask-halved = { $value } स्पेक का लगभग आधा है। क्या यह केवल आधा घेरा है? फिर से नापें।
rounds-ask-cm-as-inch = { $value } सेंटीमीटर लगता है। फिर से नापें।
rounds-ask-inch-as-cm = { $value } इंच लगता है। फिर से नापें।
rounds-ask-ten-times = { $value } स्पेक का लगभग दस गुना है। दशमलव चिह्न देखें।
rounds-ask-tenth = { $value } स्पेक का लगभग दसवाँ हिस्सा है। दशमलव चिह्न देखें।
rounds-ask-other-size = यह पीस साइज़ { $size } से ज़्यादा मेल खाता है। लेबल देखें और फिर से नापें।
rounds-ask-copied = सभी नाप स्पेक जैसे ही हैं। नापे गए या नक़ल किए गए?

## Sending the pieces

rounds-send-title = पीस भेजें
rounds-send-materials = पीस किससे बने हैं?
rounds-send-substitutes = किसकी जगह क्या?
rounds-send-parcel = कूरियर और ट्रैकिंग नंबर
rounds-send-materials-missing = बताएँ कि पीस किससे बने हैं।
rounds-materials = सामग्री
rounds-parcel = भेजने का तरीका

## Washing

washes-title = धुलाई
washes-what = धुलाई से पहले और बाद के नाप का बदलाव: (बाद − पहले) / पहले।
washes-rest = { $count ->
    [one] { $count } और जगह का बदलाव नापने की चूक से अधिक नहीं है।
   *[other] { $count } और जगहों का बदलाव नापने की चूक से अधिक नहीं है।
}
washes-points = { $count ->
    [one] { $count } बिंदु
   *[other] हर बिंदु ({ $count })
}

## Photographs of pieces

photographs-title = पीसों की तस्वीरें
photographs-add = तस्वीरें जोड़ें
photographs-add-button = जोड़ें
photographs-missing = एक तस्वीर चुनें या खींचें।
photographs-many = एक पीस की अधिकतम { $count } तस्वीरें होती हैं।

## Every value side by side

readings-title = सभी नाप साथ-साथ
readings-state = पीसों की अवस्था
readings-wrong = कुछ सहेजा नहीं गया। चिह्नित नाप देखें।
readings-asks = अभी सहेजा नहीं गया। इन्हें फिर देखें:
readings-look = अभी कुछ सहेजा नहीं गया। नाप देखें, फिर सहेजें।
readings-save = सब सहेजें
readings-empty = खाली किया गया खाना पुराना नाप बनाए रखता है।
readings-paste-title = पेस्ट करें, या शीट खोलें
readings-paste = स्प्रेडशीट या पत्र के नाप
readings-paste-help = हर बिंदु की एक पंक्ति, शुरू में उसका अक्षर या नाम। पीसों के स्तंभों के ऊपर पीस का नंबर होता है, या वे क्रम से आते हैं।
readings-file = या फ़ाइल: XLSX या CSV
readings-first = बिना नंबर के स्तंभ यहाँ से शुरू
readings-fill = खानों में भरें
readings-nothing-pasted = नाप पेस्ट करें, या फ़ाइल चुनें।
readings-filled = { $count ->
    [one] { $count } नाप खाने में भरा गया।
   *[other] { $count } नाप खानों में भरे गए।
}
readings-unknown = { $cell }: “{ $words }” इस चार्ट का बिंदु नहीं है, या पहले आ चुका है। इसके नाप छोड़ दिए गए।
readings-unreadable = { $cell } में पढ़ने लायक अंक नहीं है: स्प्रेडशीट ने शायद उसे तारीख बना दिया।
readings-no-points = कोई पंक्ति बिंदु के अक्षर या नाम से शुरू नहीं होती, और { $rows } पंक्तियाँ चार्ट के { $points } बिंदुओं के बराबर नहीं। नाप से पहले अक्षर लिखें।
readings-columns = { $columns } स्तंभों में नाप हैं, और चुने गए से { $pieces } पीस हैं। हर स्तंभ के ऊपर पीस का नंबर लिखें।
readings-twice = दो स्तंभ पीस { $piece } के हैं। एक ही रखें।
