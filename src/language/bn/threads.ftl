### Threads, messages and questions.

## An item of a revision

item-back = রিভিশন { $revision }
item-close = ফিরে যান
item-mark = { $letter }, { $name }
item-values = প্রতি সাইজের মাপ { $unit }-এ, নিচে { $other }-এ
item-tolerance = টলারেন্স
item-from = শুরু
item-to = শেষ
item-path = ফিতা কীভাবে ধরবেন
item-relaxed = না টেনে
item-stretched = টেনে
item-note = নোট
item-basis = কীভাবে মাপা
item-key = মূল পয়েন্ট
item-critical = জরুরি পয়েন্ট
item-colours = প্রতি কালারওয়েতে রং
item-not-said = বলা নেই
item-superseded = নতুন রিভিশন এসেছে
item-superseded-why = রিভিশন { $revision } দেখে সেলাই করবেন না।
item-newer = চলতি রিভিশন { $revision }-এ এটি পড়ুন
item-withdrawn = প্রত্যাহার করা
item-withdrawn-why = রিভিশন { $revision } দেখে সেলাই করবেন না: { $reason }
item-current = রিভিশন { $revision } চলতি
item-removed = বাদ দেওয়া হয়েছে
item-removed-why = রিভিশন { $revision }-এ এটি আর নেই। এ নিয়ে যা বলা হয়েছে তা এখানে থাকবে।

## Colour patches

patch-approximate = পর্দার রং আনুমানিক

## Threads on an item

threads-heading = প্রশ্ন ও আবশ্যক সংশোধন
threads-none = এ নিয়ে এখনো কেউ প্রশ্ন করেনি।
thread-asked-by = { $person } জিজ্ঞেস করেছেন
thread-asked-by-brand = ব্র্যান্ডের { $person } জিজ্ঞেস করেছেন
thread-asked-by-factory = { $factory }-এর { $person } জিজ্ঞেস করেছেন
thread-asked-of-factory = { $person } জিজ্ঞেস করেছেন, { $factory }-কে
thread-raised-on = রিভিশন { $revision }-এ তোলা
thread-next-you-answer = এখন আপনি উত্তর দেবেন।
thread-next-you-read = উত্তর এসেছে। বন্ধ করুন, অথবা কী বাকি আছে লিখুন।
thread-next-you-change = এখন আপনি ড্রাফটে বদলে প্রকাশ করবেন।
thread-next-you-verify = এখন আপনি স্যাম্পলে দেখবেন।
thread-next-answer = এরপর: { $who } উত্তর দেবে।
thread-next-read = এরপর: { $who } উত্তর পড়বে।
thread-next-change = এরপর: { $who } বদলে রিভিশন প্রকাশ করবে।
thread-next-verify = এরপর: { $who } স্যাম্পলে দেখবে।
thread-text-erased = (লেখা মুছে ফেলা হয়েছে)
thread-photo-erased = (ছবি মুছে ফেলা হয়েছে)
thread-photo = ছবি { $number }
thread-photo-taken = তোলা হয়েছে { $when }

## Writing

thread-answer = আপনার বার্তা
thread-send = পাঠান
thread-translated = { $language }, অনুবাদ: { $who }
thread-translate = এই বার্তাটি অনুবাদ করুন
thread-translate-into = ভাষা
thread-translation = অনুবাদ
thread-translate-help = এটি আপনার নামসহ বার্তার নিচে থাকে। মূল বার্তাটিই গণ্য হবে।
thread-translate-button = বার্তার পাশে রাখুন
thread-refused = এটি পাঠানো হয়নি।
thread-photos = ছবি
thread-photos-help = সর্বোচ্চ { $count }টি, JPEG, PNG বা WebP। ছবির স্থান ও প্রেরকের তথ্য রাখা হয় না।
thread-draw = এই ছবিতে আঁকুন
thread-draw-circle = বৃত্ত
thread-draw-arrow = তীর
thread-draw-dimension = মাপরেখা
thread-draw-value = মাপ
thread-draw-undo = ফিরিয়ে নিন
thread-agree = একমত
thread-mark-changed = রিভিশন { $revision }-এ বদলানো হয়েছে
thread-verify = স্যাম্পল রাউন্ড { $number }, { $kind }-এ ঠিক আছে
thread-close-question = প্রশ্ন বন্ধ করুন
thread-close-must-fix = আবশ্যক সংশোধন বন্ধ করুন
thread-close-suggestion = পরামর্শ বন্ধ করুন
thread-decline = অনুরোধ ফিরিয়ে দিন
thread-take-back = অনুরোধ তুলে নিন
thread-reopen = আবার খুলুন
thread-grant = ছাড় দিন
thread-grant-final = সই এর উপর নির্ভর করতে পারে: এটি ফেরানো যাবে না।

## Asking

ask-heading = এ নিয়ে জিজ্ঞেস করুন
ask-kind = এটি কী?
ask-question-help = উত্তর না পেলে কাজ এগোবে না।
ask-must-fix-help = এটি বদলাতেই হবে। তার আগে কেউ সই করবে না।
ask-suggestion-help = আরও ভালোভাবে করা যায়।
ask-concession-help = ফ্যাক্টরি যেমন আছে তেমন রাখার অনুমতি চায়।
ask-factory = কোন ফ্যাক্টরি?
ask-factory-choose = ফ্যাক্টরি বাছুন
ask-text = আপনার বার্তা
ask-send = পাঠান
ask-alone = এই স্টাইল এখনো কোনো ফ্যাক্টরির সাথে শেয়ার হয়নি, তাই জিজ্ঞেস করার কেউ নেই।
ask-alone-share = স্টাইল শেয়ার করুন

## Ready sentences

ready-title = তৈরি বাক্য
ready-what = অন্য পক্ষ বাক্যটি নিজের ভাষায় পড়বে।
ready-how = একটি যেমন আছে পাঠান, অথবা একটি বেছে যা বাকি তা লিখুন।
ready-other = অন্য বাক্য
ready-mark = তৈরি বাক্য
ready-slot-length = মাপ, { $unit }
ready-slot-spec = স্পেকের মাপ, { $unit }
ready-slot-item = কী নিয়ে
ready-slot-other = অন্যটি
ready-slot-material = ম্যাটেরিয়াল
ready-slot-size = সাইজ
ready-slot-date = তারিখ
ready-slot-until = পর্যন্ত
ready-slot-count = সংখ্যা
ready-slot-percent = শতাংশ
ready-slot-revision = রিভিশন
ready-slot-wrong = এটি এখানে মেলে না। আবার লিখুন বা বাছুন।

## Live pages

live-new = এই পাতায় নতুন কিছু এসেছে।
live-show = দেখান
live-lost = সংযোগ নেই। পাতাটি পুরোনো হতে পারে। আবার চেষ্টা হচ্ছে।
live-unsent = সংযোগ নেই: পাঠানো হয়নি। আবার পাঠান।
