### Ready sentences that both sides read in their own language: phrase-<id> of exchange/phrase.rs.

phrase-group-question = প্রশ্ন
phrase-group-answer = উত্তর
phrase-group-fix = যা বদলাতে হবে
phrase-group-measuring = মাপা
phrase-group-material = ম্যাটেরিয়াল
phrase-group-date = তারিখ
phrase-group-shipping = পাঠানো

## Questions

phrase-ask-how-measured = { $item } কীভাবে মাপা হয়? কোথা থেকে কোথা পর্যন্ত দেখান।
phrase-ask-which-right = { $item }: ড্রয়িং ও লেখা মেলে না। কোনটি ঠিক?
phrase-ask-photo = { $item }-এর ছবি পাঠান।
phrase-ask-larger-drawing = { $item }-এর বড় ড্রয়িং পাঠান।
phrase-ask-value = { $item }, সাইজ { $size }-এর মাপ পরিষ্কার নয়। কত?
phrase-ask-stitch = { $item }-এ কোন স্টিচ ঠিক?
phrase-ask-allowance = { $item }-এ কত সিম অ্যালাওয়েন্স লাগবে?
phrase-ask-place = { $item } ঠিক কোথায় বসবে? কোন সিম থেকে মাপা হবে?
phrase-ask-colour = { $item }-এর ঠিক রঙের রেফারেন্স কোনটি?
phrase-ask-revision = আমরা কি রিভিশন { $revision } মেনে কাজ করব?
phrase-ask-order = { $other }-এর আগে { $item } সেলাই করা যাবে কি?
phrase-ask-sample = { $item }-এর নমুনা পাঠান।

## Answers

phrase-answer-yes = হ্যাঁ।
phrase-answer-no = না।
phrase-answer-spec = স্পেক ঠিক আছে। সেই মতো কাজ করুন।
phrase-answer-drawing = ড্রয়িং ঠিক। লেখা বদলানো হবে।
phrase-answer-text = লেখা ঠিক। ড্রয়িং বদলানো হবে।
phrase-answer-value = { $item }, সাইজ { $size }: ঠিক মাপ { $value }।
phrase-answer-next = পরের রিভিশনে বদলানো হবে। সেটির অপেক্ষা করুন।
phrase-answer-changed = রিভিশন { $revision }-এ বদলানো হয়েছে।
phrase-answer-go-on = কাজ চালিয়ে যান। এতে কাজ থামবে না।
phrase-answer-stop = এটি না মেটা পর্যন্ত { $item }-এর কাজ বন্ধ রাখুন।
phrase-answer-understood = বুঝেছি। আমরা তাই করব।
phrase-answer-allowance = { $item }-এ { $value } সিম অ্যালাওয়েন্স দিন।
phrase-answer-distance = { $other } থেকে { $value } দূরে { $item } বসান।

## What must change

phrase-fix-large = { $item } { $value } বড়। স্পেকে আনুন।
phrase-fix-small = { $item } { $value } ছোট। স্পেকে আনুন।
phrase-fix-density = { $item }: প্রতি cm-এ { $count } স্টিচ দিন।
phrase-fix-twisted = { $item }-এর সিম মোচড়ানো। সমান করে সেলাই করুন।
phrase-fix-puckers = { $item }-এর সিম কুঁচকে গেছে। সুতার টান দেখুন।
phrase-fix-skipped = { $item }-এ স্টিচ বাদ পড়েছে।
phrase-fix-ends = { $item }-এর সুতার মাথা কাটুন।
phrase-fix-bartack = { $item }-এ বারট্যাক নেই।
phrase-fix-place = { $item } ভুল জায়গায়। { $value } সরান।
phrase-fix-turned = { $item } উল্টো সেলাই হয়েছে।
phrase-fix-sides = { $item }-এ ডান-বামে { $value } পার্থক্য। সমান করুন।
phrase-fix-colour = { $item }-এর রং অনুমোদিত রং নয়।
phrase-fix-print = { $item }-এর প্রিন্ট ফাটে বা উঠে যায়।
phrase-fix-stain = { $item }-এ দাগ আছে। পিস পরিষ্কার রাখুন।
phrase-fix-label = { $item }-এর লেখা ভুল। স্পেকের লেখা ব্যবহার করুন।

## Measuring

phrase-measured-says = { $item }: মাপা হয়েছে { $value }, স্পেক { $spec }।
phrase-measured-size = { $item }, সাইজ { $size }: মাপা হয়েছে { $value }।
phrase-measured-shrinks = { $item } ধোয়ায় { $percent } % ছোট হয়।
phrase-measured-grows = { $item } ধোয়ায় { $percent } % বাড়ে।
phrase-measure-again = { $item } আবার মাপুন, সমান করে, না টেনে।
phrase-measured-half = { $item } সমান করে মাপা: অর্ধেক ঘের।
phrase-measured-stretched = { $item }, টেনে: মাপা হয়েছে { $value }।
phrase-measured-allowance = প্যাটার্নে { $item }-এ আরও { $value } সিম অ্যালাওয়েন্স লাগবে।
phrase-measured-tolerance = { $item }-এর টলারেন্স রাখা যায় না। আমরা { $value } রাখতে পারি।
phrase-measured-vary = পিসগুলোর মধ্যে { $item }-এ { $value } পার্থক্য।

## Materials

phrase-material-instead = { $other }-এর বদলে { $material } ব্যবহার করা যাবে কি?
phrase-material-none = { $material } পাওয়া যাচ্ছে না।
phrase-material-arrives = { $material } { $date } তারিখে আসবে।
phrase-material-shade = { $material }-এর শেড অনুমোদিত ল্যাব ডিপের মতো নয়।
phrase-material-dip-sent = { $material }-এর ল্যাব ডিপ { $date } তারিখে পাঠানো হয়েছে।
phrase-material-dip-approve = { $material }-এর ল্যাব ডিপ অনুমোদন করুন।
phrase-material-minimum = { $material }-এর ন্যূনতম অর্ডার আমাদের প্রয়োজনের বেশি।
phrase-material-width = { $material }-এর প্রস্থ { $value }।
phrase-material-shrinks = { $material } { $percent } % ছোট হয়।
phrase-material-keep = না। স্পেক মতো { $material } ব্যবহার করুন।
phrase-material-take = হ্যাঁ। { $material } ব্যবহার করতে পারেন।
phrase-material-short = { $material }: { $count }টি কম।

## Dates

phrase-date-ready = স্যাম্পল { $date } তারিখে তৈরি হবে।
phrase-date-late = আমাদের { $count } দিন দেরি হচ্ছে।
phrase-date-need = { $date }-এর মধ্যে আমাদের স্যাম্পল লাগবে।
phrase-date-answer = { $date }-এর মধ্যে উত্তর দিন। তারপর কাজ থেমে যাবে।
phrase-date-cutting = { $date } তারিখে কাটা শুরু।
phrase-date-sewn = { $date } তারিখে সেলাই শেষ।
phrase-date-closed = ফ্যাক্টরি { $date } থেকে { $until } পর্যন্ত বন্ধ।
phrase-date-confirm = এই তারিখ নিশ্চিত করুন: { $date }।

## Shipping

phrase-ship-sent = { $date } তারিখে { $count }টি পিস পাঠানো হয়েছে।
phrase-ship-arrived = { $date } তারিখে { $count }টি পিস এসেছে।
phrase-ship-cartons = কার্টনের সংখ্যা: { $count }।
phrase-ship-missing = পার্সেলে { $count }টি পিস কম।
phrase-ship-damaged = পার্সেল নষ্ট অবস্থায় এসেছে।
phrase-ship-address = পার্সেলের ঠিকানা নিশ্চিত করুন।
phrase-ship-papers = কাস্টমসের কাগজপত্র পাঠান।
