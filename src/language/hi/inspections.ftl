### सील किए सैंपल से बल्क की जाँच।

inspection-title = बल्क जाँच { $number }
inspection-list = बल्क जाँच
inspection-head = जाँच
inspection-none = इससे अभी किसी बल्क की जाँच नहीं हुई।
inspection-do = बल्क जाँचें
inspection-what = तैयार लॉट के कुछ पीस सील किए सैंपल और उसके रिवीज़न से जाँचे जाते हैं।
inspection-no-safety = इस जाँच में पास होना सुरक्षा के बारे में कुछ नहीं कहता। वह लाइसेंस वाली प्रयोगशाला और स्थानीय क़ानून तय करते हैं।
inspection-follows = इसके बाद सुधारा गया
inspection-followed = फिर जाँचा गया
inspection-earlier = इस सील से हुई जाँचें: { $count }
inspection-blocked = बल्क जाँचने में रुकावटें: { $count }
inspection-open-other = वह जाँच खोलें

## लॉट और उसकी योजना

inspection-lot = लॉट
inspection-lot-help = लॉट में हर रंग संयोजन और साइज़ के कितने तैयार पीस हैं। जहाँ कोई नहीं, वहाँ ख़ाली छोड़ें।
inspection-count-wrong = 0 से { $most } तक पूरी संख्या लिखें।
inspection-plan = सैंपलिंग योजना
inspection-plan-of = { $lot } पीस में से { $sample } जाँचे जाते हैं
inspection-plan-moved = योजना दिखाने के बाद लॉट बदला। अब उसकी योजना यह है।
inspection-show-plan = योजना दिखाएँ
inspection-begin = यह जाँच शुरू करें
inspection-level = जाँच का स्तर
inspection-aql = AQL
inspection-aql-of = AQL, { $class } दोष
inspection-usual = स्तर II, साथ में 2.5 और 4.0 प्रचलित रीति है, कोई स्रोत नहीं।
inspection-critical-rule = क्रिटिकल दोष का कोई स्वीकार्य स्तर नहीं: एक ही लॉट को अस्वीकार करता है।
inspection-critical-found = क्रिटिकल दोष वाले पीस:
inspection-class = दोष
inspection-code = कोड अक्षर
inspection-sample = सैंपल
inspection-accept = स्वीकार
inspection-reject = अस्वीकार
inspection-done = जाँचे गए
inspection-found = दोषी
inspection-of = { $sample } में से { $done }
inspection-every-piece = लॉट का हर पीस
inspection-arrow = तालिका का तीर दूसरे अक्षर पर ले जाए तो उस अक्षर का सैंपल गिना जाता है।
inspection-source = एकल सैंपलिंग, सामान्य जाँच, MIL-STD-105E की तालिकाओं से।
inspection-colourway = रंग संयोजन
inspection-size = साइज़
inspection-in-lot = लॉट में
inspection-draw = निकालें
inspection-to-draw = क्या निकालना है
inspection-draw-how = लॉट के अनुपात में, सैंपल इजाज़त दे तो हर एक का कम से कम एक: प्रचलित रीति, कोई स्रोत नहीं। बिना चुने निकालें।

## क्या मिला

inspection-begun = शुरू किसने की
inspection-within = हर योजना निकालने के क्रम में अपने ही पहले पीस गिनती है। पीस अपने सबसे बुरे दोष की श्रेणी में गिना जाता है।
inspection-points-rule = टॉलरेंस से बाहर ज़रूरी पॉइंट मेजर दोष है, दूसरा पॉइंट माइनर: प्रचलित रीति, कोई स्रोत नहीं।
inspection-pieces = पीस
inspection-nothing-yet = अभी कोई पीस नहीं जाँचा गया।
inspection-correct = सुधारें
inspection-sound = बिना दोष: { $count }
inspection-corrected = सुधारी गई प्रविष्टियाँ: { $count }
inspection-measured = नाप: { $count }
inspection-no-defect = कोई दोष नहीं
inspection-enter-beyond = सैंपल के बाहर क्रिटिकल दोष
inspection-conceded = सील किए सैंपल पर इन्हें छूट मिली थी। यहाँ फिर भी दोष गिने जाते हैं: ब्रांड तय करता है।
inspection-curve = योजनाएँ क्या बता सकती हैं
inspection-curve-what = लॉट का कितना हिस्सा दोषी हो तो उसके स्वीकार होने की संभावना कितनी है। AQL से बुरा लॉट स्वीकार हो सकता है, और बेहतर लॉट अस्वीकार।
inspection-curve-share = दोषी हिस्सा
inspection-curve-likelihood = स्वीकार की संभावना
inspection-curve-at = { $share } दोषी होने पर स्वीकार की संभावना { $likelihood }

## आगे क्या

inspection-enter = एक पीस जाँचें
inspection-conclude = निष्कर्ष निकालें
inspection-conclude-what = प्रविष्टियों से प्रोग्राम बताता है कि लॉट स्वीकार है या अस्वीकार।
inspection-conclude-final = उसके बाद कोई पीस दर्ज या सुधारा नहीं जा सकता।
inspection-concluded = निष्कर्ष
inspection-decide = लॉट पर फ़ैसला करें
inspection-decide-final = फ़ैसला बाद में नहीं बदलता।
inspection-reason-help = जारी करने के सिवा हर फ़ैसले के लिए कारण ज़रूरी है। छूट में लिखें कि कौन से दोष जाने दिए गए।
inspection-released-help = लॉट भेजा जा सकता है।
inspection-concession-help = अस्वीकार होने पर भी लॉट भेजा जाता है। दोष लिखें।
inspection-rework-help = फ़ैक्टरी लॉट छाँटती और सुधारती है। फिर उसकी दोबारा जाँच होती है।
inspection-refused-help = लॉट नहीं लिया जाता।
inspection-fails-critical = क्रिटिकल दोष वाले पीस: { $count }। एक ही काफ़ी है।
inspection-fails = { $class } गिने गए पीस: { $found }। ज़्यादा से ज़्यादा { $accept } स्वीकार हो सकते हैं।
inspection-next-fails = जो मिला उससे लॉट अस्वीकार होता है। निष्कर्ष निकालें।
inspection-next-enter = पीस जाँचें: { $sample } में से { $done } हो गए।
inspection-next-enter-other = { $org } लॉट जाँच रहा है।
inspection-next-conclude = सैंपल जाँच लिया गया। निष्कर्ष निकालें।
inspection-next-decide = इस लॉट पर फ़ैसला करें।
inspection-next-decide-other = इस लॉट पर ब्रांड फ़ैसला करता है।
inspection-next-again = { $org } लॉट छाँटता और सुधारता है। फिर उसकी दोबारा जाँच होती है।
inspection-next-done = यहाँ करने को कुछ नहीं बचा।
inspection-again = सुधारा लॉट जाँचें

## एक पीस दर्ज करना

inspection-corrects = यह पीस पहले दर्ज हुआ था। अब जो सहेजेंगे वही गिना जाएगा; पुरानी प्रविष्टि पढ़ने के लिए रहती है।
inspection-other-sort = दूसरा रंग संयोजन या साइज़
inspection-defects = दोष
inspection-defects-how = दोष न हो तो सीधे सहेजें।
inspection-classes = क्रिटिकल: किसी को चोट पहुँचा सकता है; शक हो तो यही चुनें। मेजर: कपड़ा शायद ख़राब हो जाए या बहुत कम काम आए। माइनर: जो माँगा गया उससे अलग है, फिर भी कपड़ा काम आता है।
inspection-defect = दोष { $number }
inspection-class-of = श्रेणी
inspection-where = कहाँ
inspection-nowhere = इस सूची में नहीं
inspection-times = कितने
inspection-words = शब्दों में
inspection-more = और दोष
inspection-values = नापे गए मान
inspection-other-points = दूसरे पॉइंट: { $count }
inspection-class-missing = क्रिटिकल, मेजर या माइनर चुनें।
inspection-times-wrong = 1 से { $most } तक पूरी संख्या लिखें।
inspection-moved-on = इस बीच किसी ने वह पीस दर्ज किया। आपका अब पीस { $number } है: एक बार फिर सहेजें।
