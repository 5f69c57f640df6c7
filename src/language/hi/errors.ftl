### What went wrong, and the way out.

## A measurement that cannot be read

length-empty = कुछ नहीं लिखा। नाप लिखें, जैसे 28, 28.5 या 28 1/2।
length-not-a-number = “{ $typed }” नाप नहीं है। 28, 28.5 या 28 1/2 की तरह लिखें।
length-unknown-unit = “{ $typed }” की इकाई पहचानी नहीं गई। cm, mm या inch लिखें।
length-unit-missing = “{ $typed }” में इकाई नहीं है, और स्पेक में भी अभी नहीं। हेडर में इकाई चुनें, या यहाँ लिखें: 28 cm।
length-may-be-thousands = “{ $typed }” दो तरह से पढ़ा जा सकता है। हज़ार के चिह्न के बिना लिखें, या एक दशमलव अंक और दें।
length-zero-divisor = “{ $typed }” में भिन्न का हर शून्य है। 28 1/2 की तरह लिखें।
length-fraction-not-proper = “{ $typed }” में भिन्न एक से कम नहीं है। 28 1/2 की तरह लिखें।
length-too-fine = “{ $typed }” इतना बारीक है कि ठीक-ठीक नहीं रखा जा सकता। कम दशमलव अंक लिखें।
length-too-long = “{ $typed }” एक किलोमीटर से ज़्यादा है। क्या इकाई सही है?

## A grade rule that cannot be read

grade-unreadable = “{ $piece }” ग्रेड नियम नहीं है। लिखें 2 (हर साइज़), XS-L 2, L-2XL 2.5 (साइज़ के अनुसार), same (एक जैसा), XS=50, S=52 (नाप), या =C - 1.5 (पॉइंट C से)।
grade-two-readings = “{ $piece }” दो तरह से पढ़ा जा सकता है। दो साइज़ या दो पॉइंट का कोड या अक्षर एक ही है।
grade-unknown-size = “{ $size }” साइज़ों में नहीं है।
grade-size-twice = साइज़ “{ $size }” के दो नाप हैं।
grade-unknown-point = “{ $text }” किसी पॉइंट के अक्षर से शुरू नहीं होता। =C - 1.5 की तरह लिखें।
grade-too-few-sizes = अभी दो साइज़ नहीं हैं। पहले साइज़ लिखें, या लिखें: same।

## Forms

error-missing = यहाँ कुछ लिखें।
error-text-long = बहुत लंबा है। ज़्यादा से ज़्यादा { $most } अक्षर लिखें।
error-number-taken = दूसरे स्टाइल का यही नंबर है। दूसरा चुनें।
error-size-code-signs = साइज़ कोड में कॉमा, सेमीकोलन या बराबर का चिह्न नहीं हो सकता: ग्रेड नियम में इनकी ज़रूरत है।
error-screen = “{ $typed }” स्क्रीन का रंग नहीं है। #1f2a3c की तरह लिखें।
error-washes = कितनी बार धोना है लिखें: 1 से 99।
error-name-missing = नाम लिखें।
error-name-long = नाम बहुत लंबा है। ज़्यादा से ज़्यादा 100 अक्षर।
error-login-missing = साइन इन के लिए ई-मेल या नाम लिखें।
error-login-taken = इस नाम से कोई और साइन इन करता है। दूसरा चुनें।
error-password-short = कम से कम { $count } अक्षर लिखें।
error-password-long = पासवर्ड बहुत लंबा है। ज़्यादा से ज़्यादा 1000 अक्षर।
error-password-wrong = यह आपका पासवर्ड नहीं है।
error-place-missing = भूमिका चुनें।
error-kind-missing = चुनें कि यह क्या है।
error-factory-missing = फ़ैक्टरी चुनें।
error-text-missing = संदेश लिखें।
error-photos-many = एक बार में ज़्यादा से ज़्यादा { $count } फ़ोटो भेजें।
error-decimal = “{ $typed }” कोई संख्या नहीं है। जैसे 12.5 लिखें।
error-choice-missing = एक चुनें।
incomparable-illuminants = एक { $standard } में, दूसरी { $sample } में मापी गई: ऐसी रीडिंग मिलाई नहीं जा सकतीं। दोनों एक ही रोशनी में मापें।
incomparable-observers = एक { $standard } के लिए, दूसरी { $sample } के लिए मापी गई: ऐसी रीडिंग मिलाई नहीं जा सकतीं। दोनों एक ही ऑब्ज़र्वर के लिए मापें।
incomparable-no-colour = एक रीडिंग किसी सतह का रंग नहीं है। L*, a* और b* जाँचें।
incomparable-weight = सूत्र के भार 0.1 और 10 के बीच नहीं हैं।
not-on-screen-no-colour = किसी सतह का ऐसा रंग नहीं होता। L* 0 से 150, a* और b* −200 से 200 तक।

## Pages

problem-heading = यह नहीं हुआ
problem-heading-refused = अभी नहीं
problem-heading-not-found = नहीं मिला
problem-home = मेरे काम पर वापस
problem-not-found = ऐसा पेज नहीं है, या आपके साथ साझा नहीं है।
problem-sign-in = पहले साइन इन करें।
problem-not-yours = यह { $role } भूमिका के लिए नहीं है। जिसे अधिकार हो उससे कहें।
problem-forged = यह फ़ॉर्म पुराना है, या इस साइट से नहीं भेजा गया। पेज फिर खोलें और दोबारा भेजें।
problem-bad-form = जो भेजा गया वह पढ़ा नहीं जा सका। पेज फिर खोलें और कोशिश करें।
problem-too-large = यह भेजने के लिए बहुत बड़ा है।
problem-too-many-tries = बहुत बार ग़लत कोशिश हुई। पंद्रह मिनट रुकें।
problem-fault = हमारी तरफ़ कुछ ख़राब हुआ। पहले सहेजा हुआ कुछ नहीं खोया। Fellseam चलाने वाले को यह नंबर बताएँ: { $reference }

way-on-thread = चर्चा { $number } खोलें
way-on-current = रिवीज़न { $revision } खोलें
way-on-publish = ड्राफ़्ट फिर जाँचें
way-on-style = स्टाइल पर वापस

## Files

upload-too-large = तस्वीर बहुत बड़ी है। ज़्यादा से ज़्यादा 50 मेगापिक्सेल की भेजें।
upload-not-a-picture = यह फ़ाइल तस्वीर नहीं है। JPEG, PNG, WebP या SVG भेजें।
upload-unsupported = { $what } तरह की तस्वीर नहीं दिखाई जा सकती। JPEG, PNG, WebP या SVG भेजें।
upload-heic = यह फ़ोन तस्वीरें HEIC में रखता है। फ़ोन के कैमरा सेटिंग में “सबसे अनुकूल” (JPEG) चुनें और फिर से तस्वीर लें।
upload-too-heavy = इस तस्वीर को बनाने में बहुत समय लगता है। सरल रूप में सहेजकर फिर भेजें।
upload-broken = तस्वीर ख़राब है। फिर से सहेजकर दोबारा भेजें।
upload-failed = तस्वीर तैयार नहीं हो सकी। फिर कोशिश करें।
