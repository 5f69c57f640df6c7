# The words of the document: every value of its fixed sets, `word-SET-value`.


word-wearer-women = महिला
word-wearer-men = पुरुष
word-wearer-unisex = यूनिसेक्स
word-wearer-children = बच्चे
word-wearer-infants = शिशु

word-market-eu = यूरोपीय संघ
word-market-uk = यूनाइटेड किंगडम
word-market-us = अमेरिका
word-market-other = अन्य

word-garment-joggers = जॉगर
word-garment-shorts = शॉर्ट्स
word-garment-t-shirt = टी-शर्ट
word-garment-hoodie = हुडी
word-garment-half-zip = हाफ़-ज़िप
word-garment-jacket = जैकेट
word-garment-dress = ड्रेस
word-garment-leggings = लेगिंग

word-worn-upper-outerwear = दूसरे कपड़ों के ऊपर, शरीर का ऊपरी भाग
word-worn-upper = शरीर का ऊपरी भाग
word-worn-lower = शरीर का निचला भाग
word-worn-whole = पूरा शरीर, एक ही कपड़े में
word-worn-sleepwear = रात के कपड़े
word-worn-underwear = अंदर के कपड़े
word-worn-swimwear = तैराकी के कपड़े

word-edges-seam-to-seam = सीम से सीम
word-edges-edge-to-edge = किनारे से किनारे

word-size-system-alpha = अक्षर (S, M, L)
word-size-system-numeric = अंक
word-size-system-height = बच्चे की लंबाई के अनुसार, cm

word-body-height = लंबाई
word-body-chest-girth = सीने का घेरा
word-body-bust-girth = बस्ट का घेरा
word-body-underbust-girth = बस्ट के नीचे का घेरा
word-body-waist-girth = कमर का घेरा
word-body-hip-girth = हिप का घेरा
word-body-neck-girth = गर्दन का घेरा
word-body-head-girth = सिर का घेरा
word-body-arm-length = बाँह की लंबाई
word-body-inside-leg-length = पैर की भीतरी लंबाई
word-body-hand-girth = हथेली का घेरा
word-body-foot-length = पाँव की लंबाई

word-view-front = सामने
word-view-back = पीछे
word-view-left = बाईं ओर (पहनने वाले की बाईं)
word-view-right = दाईं ओर (पहनने वाले की दाईं)
word-view-angle = कोण से
word-view-detail = डिटेल

word-path-straight = सीधा
word-path-curved = घुमाव के साथ

word-closure-closed = बंद
word-closure-open = खुला

word-side-left = पहनने वाले की बाईं
word-side-right = पहनने वाले की दाईं
word-side-both = दोनों ओर

word-basis-half = आधा (सपाट रखकर)
word-basis-full = पूरा (चारों ओर)
word-basis-linear = लंबाई

word-direction-length = लंबाई में
word-direction-width = चौड़ाई में

word-measure-body-length = बॉडी की लंबाई
word-measure-shoulder-width = कंधे की चौड़ाई
word-measure-shoulder-length = कंधे की लंबाई
word-measure-across-front = सामने की चौड़ाई
word-measure-across-back = पीठ की चौड़ाई
word-measure-chest = चेस्ट की चौड़ाई
word-measure-waist = कमर
word-measure-waist-stretched = कमर, खींचकर
word-measure-hip = हिप
word-measure-hem = हेम की चौड़ाई
word-measure-hem-height = हेम की ऊँचाई
word-measure-sleeve-length = आस्तीन की लंबाई
word-measure-upper-arm = ऊपरी बाँह
word-measure-elbow = कोहनी
word-measure-armhole = आर्महोल
word-measure-side-seam = साइड सीम
word-measure-underarm-seam = अंडरआर्म सीम
word-measure-cuff = कफ़ की चौड़ाई
word-measure-cuff-stretched = कफ़ की चौड़ाई, खींचकर
word-measure-cuff-height = कफ़ की ऊँचाई
word-measure-neck-width = गले की चौड़ाई
word-measure-neck-opening = गले का घेरा
word-measure-neck-stretched = गले का घेरा, खींचकर
word-measure-neck-drop-front = सामने गले की गहराई
word-measure-neck-drop-back = पीछे गले की गहराई
word-measure-collar-height = कॉलर की ऊँचाई
word-measure-hood-height = हुड की ऊँचाई
word-measure-hood-width = हुड की चौड़ाई
word-measure-hood-opening = हुड का मुँह
word-measure-front-opening = सामने की ओपनिंग
word-measure-zip-length = ज़िप की लंबाई
word-measure-front-rise = फ्रंट राइज़
word-measure-back-rise = बैक राइज़
word-measure-inseam = इनसीम
word-measure-outseam = आउटसीम
word-measure-thigh = जाँघ
word-measure-knee = घुटना
word-measure-leg-opening = मोहरी
word-measure-waistband-height = कमरबंद की ऊँचाई
word-measure-pocket-opening = जेब का मुँह
word-measure-pocket-width = जेब की चौड़ाई
word-measure-pocket-depth = जेब की गहराई
word-measure-pocket-place = जेब की जगह
word-measure-gusset = गसेट
word-measure-vent = वेंट की ऊँचाई
word-measure-yoke-height = योक की ऊँचाई
word-measure-skirt-length = स्कर्ट की लंबाई

word-illuminant-d50 = D50
word-illuminant-d65 = D65
word-illuminant-a = A
word-illuminant-f11 = F11

word-observer-2 = 2° प्रेक्षक
word-observer-10 = 10° प्रेक्षक

word-approval-asked = माँगा गया
word-approval-submitted = लैब डिप भेजा गया
word-approval-approved = मंज़ूर
word-approval-rejected = नामंज़ूर

word-material-woven-fabric = वोवन कपड़ा
word-material-knitted-fabric = निट कपड़ा
word-material-other-fabric = अन्य कपड़ा
word-material-interlining = इंटरलाइनिंग
word-material-padding = पैडिंग
word-material-zip = ज़िप
word-material-drawcord = डोरी
word-material-cord-tip = डोरी का सिरा
word-material-cord-stop = डोरी स्टॉप
word-material-eyelet = आइलेट
word-material-elastic = इलास्टिक
word-material-button = बटन
word-material-snap = स्नैप बटन
word-material-hook-and-loop = हुक और लूप
word-material-buckle = बकल
word-material-webbing = वेबिंग
word-material-tape = टेप
word-material-reflective = रिफ़्लेक्टिव ट्रिम
word-material-thread = धागा
word-material-transfer = ट्रांसफ़र
word-material-patch = पैच
word-material-label = लेबल
word-material-packing = पैकिंग
word-material-other = अन्य

word-component-main = मुख्य कपड़ा
word-component-contrast = कंट्रास्ट कपड़ा
word-component-rib = रिब
word-component-lining = अस्तर
word-component-pocketing = जेब का कपड़ा
word-component-padding = पैडिंग
word-component-coating = कोटिंग
word-component-trimming = ट्रिमिंग

word-fibre-cotton = कपास (कॉटन)
word-fibre-wool = ऊन
word-fibre-virgin-wool = वर्जिन ऊन
word-fibre-recycled-wool = रीसाइकल ऊन
word-fibre-silk = रेशम
word-fibre-linen = लिनन
word-fibre-hemp = हेम्प
word-fibre-jute = जूट
word-fibre-ramie = रेमी
word-fibre-cashmere = कश्मीरी
word-fibre-mohair = मोहेर
word-fibre-alpaca = अल्पाका
word-fibre-angora = अंगोरा
word-fibre-camel = ऊँट का ऊन
word-fibre-down = डाउन
word-fibre-viscose = विस्कोस
word-fibre-modal = मोडल
word-fibre-lyocell = लायोसेल
word-fibre-cupro = क्यूप्रो
word-fibre-acetate = एसीटेट
word-fibre-triacetate = ट्राइएसीटेट
word-fibre-polyester = पॉलिएस्टर
word-fibre-polyamide = पॉलीएमाइड (नायलॉन)
word-fibre-acrylic = ऐक्रिलिक
word-fibre-modacrylic = मोडैक्रिलिक
word-fibre-polypropylene = पॉलीप्रोपाइलीन
word-fibre-polyethylene = पॉलीएथिलीन
word-fibre-polyurethane = पॉलीयूरेथेन
word-fibre-elastane = इलास्टेन
word-fibre-elastodiene = इलास्टोडाइन
word-fibre-elastolefin = इलास्टोलेफ़िन
word-fibre-elastomultiester = इलास्टोमल्टीएस्टर
word-fibre-aramid = अरामिड
word-fibre-polylactide = पॉलीलैक्टाइड
word-fibre-chlorofibre = क्लोरोफ़ाइबर
word-fibre-metal-fibre = धातु का रेशा
word-fibre-paper = काग़ज़
word-fibre-other = अन्य रेशा

word-yarn-tex = tex
word-yarn-dtex = dtex
word-yarn-denier = den
word-yarn-nm = Nm
word-yarn-ne = Ne

word-zip-teeth-coil = कॉइल
word-zip-teeth-moulded = मोल्डेड प्लास्टिक
word-zip-teeth-metal = धातु
word-zip-teeth-invisible = इनविज़िबल कॉइल

word-zip-end-closed = बंद सिरा
word-zip-end-open = खुला सिरा (अलग होने वाला)
word-zip-end-two-way = टू-वे

word-cord-place-hood-neck = हुड या गला
word-cord-place-chest = छाती
word-cord-place-waist = कमर
word-cord-place-hem = ऊपरी कपड़े का निचला किनारा
word-cord-place-legs = पैर के सिरे
word-cord-place-sleeve = आस्तीन
word-cord-place-back = पीठ
word-cord-place-elsewhere = कहीं और

word-cord-ends-free = खुले सिरे
word-cord-ends-toggled = टॉगल, टिप या गाँठ वाले खुले सिरे
word-cord-ends-fixed = सिला हुआ, खुला सिरा नहीं
word-cord-ends-loop = बंद लूप

word-measured-in-metre = m
word-measured-in-square-metre = m²
word-measured-in-piece = पीस
word-measured-in-gram = g

word-consumption-marker = मार्कर से
word-consumption-area = हिस्सों के क्षेत्रफल से
word-consumption-estimate = अनुमान

word-wastage-allowance = ज़रूरत में जोड़ा जाता है
word-wastage-loss-of-input = ख़रीदे में से नुक़सान

word-minimum-style = स्टाइल के लिए
word-minimum-colour = हर रंग के लिए
word-minimum-dimension = हर आकार के लिए

word-evidence-small-parts = छोटे हिस्से
word-evidence-flammability = ज्वलनशीलता
word-evidence-nickel = निकल
word-evidence-azo-dyes = एज़ो रंग
word-evidence-lead = सीसा
word-evidence-colour-fastness = रंग पक्कापन
word-evidence-shrinkage = सिकुड़न
word-evidence-strength = मज़बूती
word-evidence-other = अन्य

word-wash-normal-95 = 95 °C पर धोएँ
word-wash-normal-70 = 70 °C पर धोएँ
word-wash-normal-60 = 60 °C पर धोएँ
word-wash-mild-60 = 60 °C पर धोएँ, हल्के
word-wash-normal-50 = 50 °C पर धोएँ
word-wash-mild-50 = 50 °C पर धोएँ, हल्के
word-wash-normal-40 = 40 °C पर धोएँ
word-wash-mild-40 = 40 °C पर धोएँ, हल्के
word-wash-very-mild-40 = 40 °C पर धोएँ, बहुत हल्के
word-wash-normal-30 = 30 °C पर धोएँ
word-wash-mild-30 = 30 °C पर धोएँ, हल्के
word-wash-very-mild-30 = 30 °C पर धोएँ, बहुत हल्के
word-wash-hand = हाथ से धोएँ, ज़्यादा से ज़्यादा 40 °C
word-wash-no = न धोएँ

word-bleach-any = कोई भी ब्लीच
word-bleach-oxygen = केवल बिना क्लोरीन की ब्लीच
word-bleach-no = ब्लीच न करें

word-tumble-normal = टम्बल ड्राई, सामान्य (80 °C)
word-tumble-low = टम्बल ड्राई, कम ताप (60 °C)
word-tumble-no = टम्बल ड्राई न करें

word-air-dry-line = रस्सी पर सुखाएँ
word-air-dry-line-shade = छाया में रस्सी पर सुखाएँ
word-air-dry-line-drip = बिना निचोड़े रस्सी पर सुखाएँ
word-air-dry-line-drip-shade = बिना निचोड़े छाया में रस्सी पर सुखाएँ
word-air-dry-flat = सपाट सुखाएँ
word-air-dry-flat-shade = छाया में सपाट सुखाएँ
word-air-dry-flat-drip = बिना निचोड़े सपाट सुखाएँ
word-air-dry-flat-drip-shade = बिना निचोड़े छाया में सपाट सुखाएँ

word-iron-high = इस्त्री, ज़्यादा से ज़्यादा 200 °C
word-iron-medium = इस्त्री, ज़्यादा से ज़्यादा 150 °C
word-iron-low = इस्त्री, ज़्यादा से ज़्यादा 110 °C, बिना भाप
word-iron-no = इस्त्री न करें

word-dry-clean-p = ड्राई क्लीन, P
word-dry-clean-p-mild = ड्राई क्लीन, P, हल्के
word-dry-clean-f = ड्राई क्लीन, F
word-dry-clean-f-mild = ड्राई क्लीन, F, हल्के
word-dry-clean-no = ड्राई क्लीन न करें

word-wet-clean-normal = पेशेवर वेट क्लीन
word-wet-clean-mild = पेशेवर वेट क्लीन, हल्के
word-wet-clean-very-mild = पेशेवर वेट क्लीन, बहुत हल्के
word-wet-clean-no = वेट क्लीन न करें

word-line-seam = सीम
word-line-edge = किनारा
word-line-fold = मोड़
word-line-centre-line = बीच की रेखा

word-seam-1 = 1 एक पर एक
word-seam-2 = 2 लैप्ड
word-seam-3 = 3 बाइंडिंग
word-seam-4 = 4 सपाट
word-seam-5 = 5 सजावटी
word-seam-6 = 6 किनारा फ़िनिश
word-seam-7 = 7 जोड़ी हुई
word-seam-8 = 8 एक परत

word-method-screen-print = स्क्रीन प्रिंट
word-method-heat-transfer = हीट ट्रांसफ़र
word-method-digital-print = डिजिटल प्रिंट
word-method-sublimation = सब्लिमेशन
word-method-embroidery = कढ़ाई
word-method-woven-patch = बुना पैच
word-method-applique = एप्लीक
word-method-deboss = डीबॉस
word-method-other = अन्य

word-artwork-form-vector = रेखाएँ और क्षेत्र (वेक्टर)
word-artwork-form-raster = तस्वीर (रास्टर)
word-artwork-form-stitches = स्टिच फ़ाइल

word-anchor-top = ऊपर
word-anchor-bottom = नीचे
word-anchor-left = बायाँ (पढ़ने की दिशा में)
word-anchor-right = दायाँ (पढ़ने की दिशा में)
word-anchor-centre = बीच

word-label-brand = ब्रांड
word-label-care-composition = देखभाल और संरचना
word-label-size-loop = साइज़ लूप
word-label-origin = मूल देश
word-label-warning = चेतावनी
word-label-other = अन्य

word-label-made-woven = बुना
word-label-made-printed = छपा
word-label-made-transfer = ट्रांसफ़र

word-label-fold-flat = बिना मोड़
word-label-fold-centre = बीच से मोड़
word-label-fold-ends = सिरे मुड़े
word-label-fold-mitre = तिरछा मोड़
word-label-fold-loop = लूप

word-driver-style = सभी में एक जैसा
word-driver-size = साइज़ के अनुसार
word-driver-colourway = रंग संयोजन के अनुसार
word-driver-market = बाज़ार के अनुसार

word-label-content-composition = संरचना
word-label-content-care = देखभाल
word-label-content-origin = मूल देश
word-label-content-size = साइज़

word-assortment-solid = सॉलिड: कार्टन में एक साइज़ और एक रंग
word-assortment-assorted = मिश्रित

word-stitch-class-100 = एक धागे की चेनस्टिच
word-stitch-class-200 = हाथ की सिलाई
word-stitch-class-300 = लॉकस्टिच
word-stitch-class-400 = कई धागों की चेनस्टिच
word-stitch-class-500 = ओवरएज स्टिच
word-stitch-class-600 = कवरिंग स्टिच

word-status-verified = प्रकाशित प्रति से मिलाया गया
word-status-seen = इस्तेमाल में देखा, आधिकारिक पाठ से नहीं मिलाया
word-status-from-memory = आधिकारिक पाठ से नहीं मिलाया
