# The words of the document: every value of its fixed sets, `word-SET-value`.


word-wearer-women = মহিলা
word-wearer-men = পুরুষ
word-wearer-unisex = ইউনিসেক্স
word-wearer-children = শিশু
word-wearer-infants = নবজাতক

word-market-eu = ইউরোপীয় ইউনিয়ন
word-market-uk = যুক্তরাজ্য
word-market-us = যুক্তরাষ্ট্র
word-market-other = অন্য

word-garment-joggers = জগার
word-garment-shorts = শর্টস
word-garment-t-shirt = টি-শার্ট
word-garment-hoodie = হুডি
word-garment-half-zip = হাফ-জিপ
word-garment-jacket = জ্যাকেট
word-garment-dress = ড্রেস
word-garment-leggings = লেগিংস

word-worn-upper-outerwear = অন্য পোশাকের উপর, শরীরের উপরের অংশে
word-worn-upper = শরীরের উপরের অংশ
word-worn-lower = শরীরের নিচের অংশ
word-worn-whole = পুরো শরীর, এক খণ্ডে
word-worn-sleepwear = রাতের পোশাক
word-worn-underwear = অন্তর্বাস
word-worn-swimwear = সাঁতারের পোশাক

word-edges-seam-to-seam = সিম থেকে সিম
word-edges-edge-to-edge = কিনারা থেকে কিনারা

word-size-system-alpha = অক্ষর (S, M, L)
word-size-system-numeric = সংখ্যা
word-size-system-height = শিশুর উচ্চতা ধরে, cm

word-body-height = উচ্চতা
word-body-chest-girth = বুকের ঘের
word-body-bust-girth = বাস্টের ঘের
word-body-underbust-girth = আন্ডারবাস্টের ঘের
word-body-waist-girth = কোমরের ঘের
word-body-hip-girth = হিপের ঘের
word-body-neck-girth = গলার ঘের
word-body-head-girth = মাথার ঘের
word-body-arm-length = হাতের দৈর্ঘ্য
word-body-inside-leg-length = পায়ের ভেতরের দৈর্ঘ্য
word-body-hand-girth = হাতের তালুর ঘের
word-body-foot-length = পায়ের পাতার দৈর্ঘ্য

word-view-front = সামনে
word-view-back = পেছনে
word-view-left = বাম পাশ (যিনি পরেন তাঁর বাম)
word-view-right = ডান পাশ (যিনি পরেন তাঁর ডান)
word-view-angle = কোণ থেকে
word-view-detail = ডিটেইল

word-path-straight = সোজা
word-path-curved = বাঁক ধরে

word-closure-closed = বন্ধ
word-closure-open = খোলা

word-side-left = যিনি পরেন তাঁর বাম
word-side-right = যিনি পরেন তাঁর ডান
word-side-both = দুই পাশ

word-basis-half = অর্ধেক (সমান করে রেখে)
word-basis-full = পুরো (চারপাশ)
word-basis-linear = দৈর্ঘ্য

word-direction-length = লম্বালম্বি
word-direction-width = আড়াআড়ি

word-measure-body-length = বডির দৈর্ঘ্য
word-measure-shoulder-width = কাঁধের প্রস্থ
word-measure-shoulder-length = কাঁধের দৈর্ঘ্য
word-measure-across-front = সামনের আড়াআড়ি
word-measure-across-back = পেছনের আড়াআড়ি
word-measure-chest = বুকের প্রস্থ
word-measure-waist = কোমর
word-measure-waist-stretched = কোমর, টেনে
word-measure-hip = হিপ
word-measure-hem = হেমের প্রস্থ
word-measure-hem-height = হেমের উচ্চতা
word-measure-sleeve-length = হাতার দৈর্ঘ্য
word-measure-upper-arm = উপরের হাত
word-measure-elbow = কনুই
word-measure-armhole = আর্মহোল
word-measure-side-seam = সাইড সিম
word-measure-underarm-seam = আন্ডারআর্ম সিম
word-measure-cuff = কাফের মুখ
word-measure-cuff-stretched = কাফের মুখ, টেনে
word-measure-cuff-height = কাফের উচ্চতা
word-measure-neck-width = গলার প্রস্থ
word-measure-neck-opening = গলার মুখ
word-measure-neck-stretched = গলার মুখ, টেনে
word-measure-neck-drop-front = সামনের গলার গভীরতা
word-measure-neck-drop-back = পেছনের গলার গভীরতা
word-measure-collar-height = কলারের উচ্চতা
word-measure-hood-height = হুডের উচ্চতা
word-measure-hood-width = হুডের প্রস্থ
word-measure-hood-opening = হুডের মুখ
word-measure-front-opening = সামনের খোলা
word-measure-zip-length = জিপের দৈর্ঘ্য
word-measure-front-rise = ফ্রন্ট রাইজ
word-measure-back-rise = ব্যাক রাইজ
word-measure-inseam = ইনসিম
word-measure-outseam = আউটসিম
word-measure-thigh = উরু
word-measure-knee = হাঁটু
word-measure-leg-opening = মোহরী
word-measure-waistband-height = ওয়েস্টব্যান্ডের উচ্চতা
word-measure-pocket-opening = পকেটের মুখ
word-measure-pocket-width = পকেটের প্রস্থ
word-measure-pocket-depth = পকেটের গভীরতা
word-measure-pocket-place = পকেটের স্থান
word-measure-gusset = গাসেট
word-measure-vent = ভেন্টের উচ্চতা
word-measure-yoke-height = ইয়োকের উচ্চতা
word-measure-skirt-length = স্কার্টের দৈর্ঘ্য

word-illuminant-d50 = D50
word-illuminant-d65 = D65
word-illuminant-a = A
word-illuminant-f11 = F11

word-observer-2 = 2° দর্শক
word-observer-10 = 10° দর্শক

word-approval-asked = চাওয়া হয়েছে
word-approval-submitted = ল্যাব ডিপ পাঠানো হয়েছে
word-approval-approved = অনুমোদিত
word-approval-rejected = প্রত্যাখ্যাত

word-material-woven-fabric = ওভেন কাপড়
word-material-knitted-fabric = নিট কাপড়
word-material-other-fabric = অন্য কাপড়
word-material-interlining = ইন্টারলাইনিং
word-material-padding = প্যাডিং
word-material-zip = জিপ
word-material-drawcord = ড্রকর্ড
word-material-cord-tip = কর্ড টিপ
word-material-cord-stop = কর্ড স্টপ
word-material-eyelet = আইলেট
word-material-elastic = ইলাস্টিক
word-material-button = বোতাম
word-material-snap = স্ন্যাপ বোতাম
word-material-hook-and-loop = হুক অ্যান্ড লুপ
word-material-buckle = বাকল
word-material-webbing = ওয়েবিং
word-material-tape = টেপ
word-material-reflective = রিফ্লেক্টিভ ট্রিম
word-material-thread = সুতা
word-material-transfer = ট্রান্সফার
word-material-patch = প্যাচ
word-material-label = লেবেল
word-material-packing = প্যাকিং
word-material-other = অন্য

word-component-main = মূল কাপড়
word-component-contrast = কনট্রাস্ট কাপড়
word-component-rib = রিব
word-component-lining = লাইনিং
word-component-pocketing = পকেটের কাপড়
word-component-padding = প্যাডিং
word-component-coating = কোটিং
word-component-trimming = ট্রিমিং

word-fibre-cotton = সুতি
word-fibre-wool = উল
word-fibre-virgin-wool = ভার্জিন উল
word-fibre-recycled-wool = পুনর্ব্যবহৃত উল
word-fibre-silk = রেশম
word-fibre-linen = লিনেন
word-fibre-hemp = হেম্প
word-fibre-jute = পাট
word-fibre-ramie = র‍্যামি
word-fibre-cashmere = কাশ্মীরি
word-fibre-mohair = মোহেয়ার
word-fibre-alpaca = আলপাকা
word-fibre-angora = অ্যাঙ্গোরা
word-fibre-camel = উটের পশম
word-fibre-down = ডাউন
word-fibre-viscose = ভিসকোস
word-fibre-modal = মোডাল
word-fibre-lyocell = লাইওসেল
word-fibre-cupro = কিউপ্রো
word-fibre-acetate = অ্যাসিটেট
word-fibre-triacetate = ট্রাইঅ্যাসিটেট
word-fibre-polyester = পলিয়েস্টার
word-fibre-polyamide = পলিঅ্যামাইড (নাইলন)
word-fibre-acrylic = অ্যাক্রিলিক
word-fibre-modacrylic = মোডাক্রিলিক
word-fibre-polypropylene = পলিপ্রোপিলিন
word-fibre-polyethylene = পলিইথিলিন
word-fibre-polyurethane = পলিইউরেথেন
word-fibre-elastane = ইলাস্টেন
word-fibre-elastodiene = ইলাস্টোডাইন
word-fibre-elastolefin = ইলাস্টোলেফিন
word-fibre-elastomultiester = ইলাস্টোমাল্টিএস্টার
word-fibre-aramid = অ্যারামিড
word-fibre-polylactide = পলিল্যাকটাইড
word-fibre-chlorofibre = ক্লোরোফাইবার
word-fibre-metal-fibre = ধাতব আঁশ
word-fibre-paper = কাগজ
word-fibre-other = অন্য আঁশ

word-yarn-tex = tex
word-yarn-dtex = dtex
word-yarn-denier = den
word-yarn-nm = Nm
word-yarn-ne = Ne

word-zip-teeth-coil = কয়েল
word-zip-teeth-moulded = ছাঁচের প্লাস্টিক
word-zip-teeth-metal = ধাতব
word-zip-teeth-invisible = ইনভিজিবল কয়েল

word-zip-end-closed = বন্ধ প্রান্ত
word-zip-end-open = খোলা প্রান্ত (আলাদা হয়)
word-zip-end-two-way = টু-ওয়ে

word-cord-place-hood-neck = হুড বা গলা
word-cord-place-chest = বুক
word-cord-place-waist = কোমর
word-cord-place-hem = টপের নিচের কিনারা
word-cord-place-legs = পায়ের শেষ
word-cord-place-sleeve = হাতা
word-cord-place-back = পিঠ
word-cord-place-elsewhere = অন্য কোথাও

word-cord-ends-free = খোলা প্রান্ত
word-cord-ends-toggled = খোলা প্রান্ত, টগল, টিপ বা গিঁটসহ
word-cord-ends-fixed = সেলাই করা, খোলা প্রান্ত নেই
word-cord-ends-loop = বন্ধ লুপ

word-measured-in-metre = m
word-measured-in-square-metre = m²
word-measured-in-piece = পিস
word-measured-in-gram = g

word-consumption-marker = মার্কার থেকে
word-consumption-area = অংশের ক্ষেত্রফল থেকে
word-consumption-estimate = আনুমানিক

word-wastage-allowance = প্রয়োজনের সাথে যোগ
word-wastage-loss-of-input = কেনা থেকে নষ্ট

word-minimum-style = স্টাইলের জন্য
word-minimum-colour = প্রতি রঙের জন্য
word-minimum-dimension = প্রতি আকারের জন্য

word-evidence-small-parts = ছোট অংশ
word-evidence-flammability = দাহ্যতা
word-evidence-nickel = নিকেল
word-evidence-azo-dyes = অ্যাজো রং
word-evidence-lead = সিসা
word-evidence-colour-fastness = রঙের স্থায়িত্ব
word-evidence-shrinkage = সংকোচন
word-evidence-strength = শক্তি
word-evidence-other = অন্য

word-wash-normal-95 = 95 °C-এ ধোয়া
word-wash-normal-70 = 70 °C-এ ধোয়া
word-wash-normal-60 = 60 °C-এ ধোয়া
word-wash-mild-60 = 60 °C-এ ধোয়া, মৃদু
word-wash-normal-50 = 50 °C-এ ধোয়া
word-wash-mild-50 = 50 °C-এ ধোয়া, মৃদু
word-wash-normal-40 = 40 °C-এ ধোয়া
word-wash-mild-40 = 40 °C-এ ধোয়া, মৃদু
word-wash-very-mild-40 = 40 °C-এ ধোয়া, খুব মৃদু
word-wash-normal-30 = 30 °C-এ ধোয়া
word-wash-mild-30 = 30 °C-এ ধোয়া, মৃদু
word-wash-very-mild-30 = 30 °C-এ ধোয়া, খুব মৃদু
word-wash-hand = হাতে ধোয়া, সর্বোচ্চ 40 °C
word-wash-no = ধোবেন না

word-bleach-any = যেকোনো ব্লিচ
word-bleach-oxygen = শুধু ক্লোরিন ছাড়া ব্লিচ
word-bleach-no = ব্লিচ করবেন না

word-tumble-normal = টাম্বল ড্রাই, সাধারণ (80 °C)
word-tumble-low = টাম্বল ড্রাই, কম তাপ (60 °C)
word-tumble-no = টাম্বল ড্রাই করবেন না

word-air-dry-line = দড়িতে শুকানো
word-air-dry-line-shade = ছায়ায় দড়িতে শুকানো
word-air-dry-line-drip = না নিংড়ে দড়িতে শুকানো
word-air-dry-line-drip-shade = না নিংড়ে ছায়ায় দড়িতে শুকানো
word-air-dry-flat = সমান করে শুকানো
word-air-dry-flat-shade = ছায়ায় সমান করে শুকানো
word-air-dry-flat-drip = না নিংড়ে সমান করে শুকানো
word-air-dry-flat-drip-shade = না নিংড়ে ছায়ায় সমান করে শুকানো

word-iron-high = ইস্ত্রি, সর্বোচ্চ 200 °C
word-iron-medium = ইস্ত্রি, সর্বোচ্চ 150 °C
word-iron-low = ইস্ত্রি, সর্বোচ্চ 110 °C, বাষ্প ছাড়া
word-iron-no = ইস্ত্রি করবেন না

word-dry-clean-p = ড্রাই ক্লিন, P
word-dry-clean-p-mild = ড্রাই ক্লিন, P, মৃদু
word-dry-clean-f = ড্রাই ক্লিন, F
word-dry-clean-f-mild = ড্রাই ক্লিন, F, মৃদু
word-dry-clean-no = ড্রাই ক্লিন করবেন না

word-wet-clean-normal = পেশাদার ওয়েট ক্লিন
word-wet-clean-mild = পেশাদার ওয়েট ক্লিন, মৃদু
word-wet-clean-very-mild = পেশাদার ওয়েট ক্লিন, খুব মৃদু
word-wet-clean-no = ওয়েট ক্লিন করবেন না

word-line-seam = সিম
word-line-edge = কিনারা
word-line-fold = ভাঁজ
word-line-centre-line = মাঝের রেখা

word-seam-1 = 1 একের উপর এক
word-seam-2 = 2 ল্যাপড
word-seam-3 = 3 বাঁধানো
word-seam-4 = 4 সমতল
word-seam-5 = 5 সাজের
word-seam-6 = 6 কিনারা শেষ করা
word-seam-7 = 7 জোড়া লাগানো
word-seam-8 = 8 এক স্তর

word-method-screen-print = স্ক্রিন প্রিন্ট
word-method-heat-transfer = হিট ট্রান্সফার
word-method-digital-print = ডিজিটাল প্রিন্ট
word-method-sublimation = সাবলিমেশন
word-method-embroidery = এমব্রয়ডারি
word-method-woven-patch = বোনা প্যাচ
word-method-applique = অ্যাপ্লিক
word-method-deboss = ডিবস
word-method-other = অন্য

word-artwork-form-vector = রেখা ও ক্ষেত্র (ভেক্টর)
word-artwork-form-raster = ছবি (র‍্যাস্টার)
word-artwork-form-stitches = স্টিচ ফাইল

word-anchor-top = উপর
word-anchor-bottom = নিচ
word-anchor-left = বাম (পড়ার দিকে)
word-anchor-right = ডান (পড়ার দিকে)
word-anchor-centre = মাঝ

word-label-brand = ব্র্যান্ড
word-label-care-composition = কেয়ার ও উপাদান
word-label-size-loop = সাইজ লুপ
word-label-origin = উৎপত্তি
word-label-warning = সতর্কতা
word-label-other = অন্য

word-label-made-woven = বোনা
word-label-made-printed = ছাপা
word-label-made-transfer = ট্রান্সফার

word-label-fold-flat = ভাঁজ ছাড়া
word-label-fold-centre = মাঝে ভাঁজ
word-label-fold-ends = দুই প্রান্তে ভাঁজ
word-label-fold-mitre = মাইটার ভাঁজ
word-label-fold-loop = লুপ

word-driver-style = সবগুলোতে একই
word-driver-size = সাইজ ধরে
word-driver-colourway = কালারওয়ে ধরে
word-driver-market = বাজার ধরে

word-label-content-composition = উপাদান
word-label-content-care = কেয়ার
word-label-content-origin = উৎপত্তি
word-label-content-size = সাইজ

word-assortment-solid = সলিড: কার্টনে এক সাইজ ও এক কালারওয়ে
word-assortment-assorted = মেশানো

word-stitch-class-100 = এক সুতার চেইনস্টিচ
word-stitch-class-200 = হাতের সেলাই
word-stitch-class-300 = লকস্টিচ
word-stitch-class-400 = একাধিক সুতার চেইনস্টিচ
word-stitch-class-500 = ওভারএজ স্টিচ
word-stitch-class-600 = কভারিং স্টিচ

word-status-verified = প্রকাশিত কপির সাথে মেলানো
word-status-seen = ব্যবহারে দেখা, সরকারি লেখার সাথে মেলানো হয়নি
word-status-from-memory = সরকারি লেখার সাথে মেলানো হয়নি
