### Sample rounds and measuring.

rounds-title = { $kind }, স্যাম্পল রাউন্ড { $number }
rounds-revision = রিভিশন
rounds-factory = ফ্যাক্টরি
rounds-asked = চাওয়া হয়েছে
rounds-missing = বাকি
rounds-out = টলারেন্সের বাইরে
rounds-critical-out = জরুরি পয়েন্ট বাইরে
rounds-values = মাপা হয়েছে
rounds-measured-of = { $count }-এর মধ্যে { $measured }

## Asking for a round

rounds-new-title = স্যাম্পল চান
rounds-new-bound = ফ্যাক্টরি রিভিশন { $revision } মেনে এই স্যাম্পল বানাবে।
rounds-choose = ফ্যাক্টরি বাছুন
rounds-factory-missing = ফ্যাক্টরি বাছুন।
rounds-kind = স্যাম্পল কীসের জন্য?
rounds-kind-proto-help = প্রথম পিস: আমরা একে অন্যকে বুঝেছি তো?
rounds-kind-fit-help = ফিট হয় কি, মাপ ঠিক আছে কি?
rounds-kind-size-set-help = প্রতি সাইজে একটি: গ্রেডিং ঠিক আছে কি?
rounds-kind-pre-production-help = অর্ডার যেভাবে হবে: আসল ম্যাটেরিয়াল, আসল লাইন।
rounds-kind-top-of-production-help = আসল অর্ডারের প্রথম পিসগুলো।
rounds-pieces = প্রতি সাইজে কত পিস?
rounds-count-wrong = 0 থেকে { $most } পর্যন্ত একটি পূর্ণ সংখ্যা লিখুন।
rounds-new-button = স্যাম্পল চান
rounds-back-to-style = স্টাইলে ফিরুন
rounds-not-shared = এই স্টাইল এখনো কোনো ফ্যাক্টরির সাথে শেয়ার হয়নি। আগে শেয়ার করুন।
rounds-none-current = কোনো চলতি রিভিশন নেই। আগে প্রকাশ করুন।

## What is next

rounds-next-start = এই স্যাম্পলের কাজ শুরু করুন।
rounds-next-start-other = আপনার মার্চেন্ডাইজার কাজ শুরু করবেন।
rounds-next-start-factory = এরপর { $org } কাজ শুরু করবে।
rounds-next-measure = পিসগুলো মাপুন: { $count }টি মাপ বাকি।
rounds-next-dispatch = সব মাপা হয়েছে। পিস পাঠিয়ে এখানে জানান।
rounds-next-dispatch-other = সব মাপা হয়েছে। মার্চেন্ডাইজার পিস পাঠাবেন।
rounds-next-in-work = { $org } পিস বানাচ্ছে ও মাপছে।
rounds-next-receive = পিস পথে আছে। পৌঁছালে জানান।
rounds-next-on-the-way = পিস পথে আছে। পৌঁছালে ব্র্যান্ড জানাবে।
rounds-next-check = পিস মাপুন, অথবা ফ্যাক্টরির মাপ যাচাই করুন। তারপর জানান মাপা শেষ।
rounds-next-check-other = ব্র্যান্ড পিস দেখছে।
rounds-next-decide = এই স্যাম্পল নিয়ে সিদ্ধান্ত নিন।
rounds-next-decide-other = এরপর ব্র্যান্ড সিদ্ধান্ত নেবে।
rounds-next-cancelled = এই রাউন্ড বাতিল। আর কিছু করার নেই।
rounds-next-sign = সিদ্ধান্ত পড়ুন, তারপর সই করুন।
rounds-next-sign-blocked = একটি প্রশ্ন খোলা। আগে মেটান, তারপর সিদ্ধান্তে সই করুন।
rounds-next-sign-other = এখনো সই করেনি: { $side }।
rounds-next-done = দুই পক্ষ সই করেছে। আর কিছু করার নেই।

rounds-move-start = কাজ শুরু
rounds-move-dispatch = পিস পাঠানো হয়েছে
rounds-move-receive = পিস পৌঁছেছে
rounds-move-finish-measuring = মাপা শেষ
rounds-measure = মাপুন
rounds-correct = একটি মাপ ঠিক করুন
rounds-sign = সইয়ের জায়গায় যান
rounds-see-open = কী খোলা আছে দেখুন
rounds-unfinished = { $count }টি মাপ বাকি।
rounds-unfinished-what = এগুলো কেউ মাপেনি। মাপুন, অথবা ছাড়াই এগোন।
rounds-unfinished-piece = পিস { $number }, সাইজ { $size }
rounds-dispatch-anyway = এই মাপ ছাড়াই পিস পাঠানো হয়েছে
rounds-finish-anyway = তবুও শেষ করুন

## A newer revision

rounds-newer = রিভিশন { $revision } এসেছে।
rounds-newer-bound = এই স্যাম্পলগুলো রিভিশন { $revision } মেনে বানানো।
rounds-newer-wait = এগুলো চলবে কিনা ব্র্যান্ড জানাবে।
rounds-newer-changes = কী বদলেছে দেখুন
rounds-continue = রিভিশন { $revision } দিয়ে চালিয়ে যান
rounds-restart = রিভিশন { $revision } দিয়ে নতুন করে শুরু
rounds-restart-sure = এই রাউন্ড বাতিল হিসেবে শেষ হবে এবং তেমনই থাকবে। এতে যা মাপা হয়েছে তা রাখা থাকবে। একই পিসগুলো রিভিশন { $revision } দিয়ে সঙ্গে সঙ্গে আবার চাওয়া হবে।
rounds-restart-reason = রিভিশন { $revision } দিয়ে নতুন করে শুরু হয়েছে।

## Pieces and points

rounds-pieces-by-points = মাপ
rounds-caption = একক: { $unit }
rounds-pick-piece = পিস
rounds-piece = পিস { $number }
rounds-letter = অক্ষর
rounds-point = মাপের পয়েন্ট
rounds-spec = স্পেক
rounds-critical = জরুরি
rounds-critical-line = { $letter } { $name } জরুরি পয়েন্ট, { $count }টি পিসে টলারেন্সের বাইরে।
rounds-not-yet = এখনো না
rounds-over = টলারেন্সের বেশি
rounds-under = টলারেন্সের কম
rounds-apart = দুই পক্ষের মাপে বেশি পার্থক্য: আগে কীভাবে মাপবেন ঠিক করুন।
rounds-legend = ▲ টলারেন্সের বেশি, ▼ টলারেন্সের কম।
rounds-legend-both = ব্র্যান্ড যেখানে মেপেছে, সেখানে তার মাপই ধরা হবে।

## Deciding

rounds-decide = সিদ্ধান্ত
rounds-stop = এই রাউন্ড থামান
rounds-outcome = আপনার সিদ্ধান্ত কী?
rounds-outcome-missing = সিদ্ধান্ত বাছুন।
rounds-approved-help = স্যাম্পল ঠিক আছে। কোনো পরিবর্তন নেই।
rounds-approved-with-changes-help = নিচের পরিবর্তন বাদে ঠিক। প্রতিটি পরের রিভিশনের আবশ্যক সংশোধন হবে।
rounds-remake-help = এই স্যাম্পলগুলো আবার বানান। কারণ লিখুন।
rounds-cancelled-help = ফল ছাড়াই এই রাউন্ড শেষ করুন। কারণ লিখুন।
rounds-changes = পরিবর্তন
rounds-changes-help = শুধু পরিবর্তনসহ অনুমোদনের জন্য। যা বদলানোর দরকার নেই তার টিক তুলে দিন।
rounds-change-text = { $letter }-এ কী বদলাতে হবে
rounds-other-item = আরেকটি পরিবর্তন
rounds-no-item = কিছু না
rounds-other-text = সেখানে কী বদলাতে হবে
rounds-reason = কারণ
rounds-reason-help = দুই পক্ষই পড়বে। আবার বানানো বা বাতিলের জন্য কারণ লাগবে।
rounds-decide-button = সিদ্ধান্ত দিন
rounds-suggestion = { $pieces } { $tolerance } { $unit }-এর মধ্যে আনুন।
rounds-suggestion-piece = পিস { $piece }, সাইজ { $size }: মাপা হয়েছে { $measured }, স্পেক { $spec } ({ $off })।

rounds-decided = সিদ্ধান্ত
rounds-reason-erased = (কারণ মুছে ফেলা হয়েছে)
rounds-must-fixes = এই সিদ্ধান্ত থেকে আবশ্যক সংশোধন
rounds-another = আরেকটি রাউন্ড চান

## Signing

sign-title = সই
sign-signed = সই হয়েছে
sign-not-yet = এখনো সই হয়নি
sign-fingerprint = ফিঙ্গারপ্রিন্ট
sign-as = আমি { $name }, { $role } হিসেবে সই করছি
sign-button = সই করুন
sign-blocked = আপনি এখনো সই করতে পারবেন না
sign-local = { $time }, সইকারীর নিজের সময়
sign-to-acknowledge = প্রাপ্তি স্বীকার করুন
sign-to-thread = { $kind } খুলুন: { $item }

## History

rounds-history = ইতিহাস
rounds-did-request = রিভিশন { $revision }-এর { $count }টি পিস চেয়েছেন।
rounds-did-start = কাজ শুরু করেছেন।
rounds-did-dispatch = পিস পাঠিয়েছেন।
rounds-did-receive = পিস পেয়েছেন।
rounds-did-finish-measuring = জানিয়েছেন মাপা শেষ।
rounds-did-continue = এই স্যাম্পল নিয়েই এগোচ্ছেন। রিভিশন { $revision } এগুলো বদলায় না।
rounds-did-measure = { $count }টি মাপ নিয়েছেন।
rounds-did-decide = সিদ্ধান্ত নিয়েছেন: { $outcome }।
rounds-did-sign = সিদ্ধান্তে সই করেছেন।
rounds-did-must-fix = আবশ্যক সংশোধন দিয়েছেন: { $letter } { $name }।

## Measuring on a phone

rounds-measure-title = পিস { $piece } মাপুন
rounds-missing-count = { $count ->
    [0] সব মাপা হয়েছে
   *[other] { $count }টি বাকি
}
rounds-back-to-round = { $kind }, রাউন্ড { $number }-এ ফিরুন
rounds-progress = এই পিসের যেসব পয়েন্ট মাপা হয়েছে
rounds-waiting = এখনো পাঠানো হয়নি:
rounds-drop = ফেলে দিন
rounds-place = { $count }-এর মধ্যে { $place }
rounds-how = { $start } থেকে { $end } পর্যন্ত।
rounds-stretched = টেনে মাপুন।
rounds-half = অর্ধেক
rounds-half-how = সমান করে রেখে
rounds-full = পুরো
rounds-full-how = চারপাশ ঘুরে
rounds-length = দৈর্ঘ্য
rounds-value = মাপ
rounds-save-next = সংরক্ষণ, পরেরটি
rounds-kept = সংযোগ ছাড়াও এই পাতা আবার খোলা যাবে।
rounds-plain = HTTPS ছাড়া সংযোগ না থাকলে এই পাতা আবার খোলা যায় না। আপনি যা লেখেন তা তবু রাখা থাকে।
rounds-save-anyway = ঠিক আছে: সংরক্ষণ
rounds-back = আগেরটি
rounds-next = পরেরটি
rounds-skip = বাদ দিন
rounds-skip-why = কেন মাপা হলো না?
rounds-skip-later = পরে: পরের পয়েন্ট
rounds-skipped = বাদ দেওয়া হয়েছে:
rounds-state-spec = স্পেক অনুযায়ী
rounds-state-is-spec = স্পেকের সংখ্যা
rounds-measure-in = মাপুন:
rounds-delete = মুছুন
rounds-not-positive = মাপ শূন্যের বেশি হতে হবে।
rounds-key-used = এই ফর্ম আগে অন্য মাপ দিয়ে পাঠানো হয়েছে। মাপটি আবার দেখে সংরক্ষণ করুন।

rounds-ask-doubled = { $value } স্পেকের প্রায় দ্বিগুণ। এটি কি পুরো ঘের? আবার মাপুন।
rounds-ask-halved = { $value } স্পেকের প্রায় অর্ধেক। এটি কি শুধু অর্ধেক ঘের? আবার মাপুন।
rounds-ask-cm-as-inch = { $value } সেন্টিমিটার মনে হচ্ছে। আবার মাপুন।
rounds-ask-inch-as-cm = { $value } ইঞ্চি মনে হচ্ছে। আবার মাপুন।
rounds-ask-ten-times = { $value } স্পেকের প্রায় দশ গুণ। দশমিক চিহ্ন দেখুন।
rounds-ask-tenth = { $value } স্পেকের প্রায় দশ ভাগের এক ভাগ। দশমিক চিহ্ন দেখুন।
rounds-ask-other-size = এই পিস { $size } সাইজের সাথে বেশি মেলে। লেবেল দেখুন, আবার মাপুন।
rounds-ask-copied = সব মাপ স্পেকের সমান। মাপা হয়েছে, নাকি নকল করা?

## Sending the pieces

rounds-send-title = পিস পাঠান
rounds-send-materials = পিসগুলো কী দিয়ে তৈরি?
rounds-send-substitutes = কীসের বদলে কী?
rounds-send-parcel = কুরিয়ার ও ট্র্যাকিং নম্বর
rounds-send-materials-missing = পিসগুলো কী দিয়ে তৈরি, লিখুন।
rounds-materials = উপকরণ
rounds-parcel = যেভাবে পাঠানো

## Washing

washes-title = ধোয়া
washes-what = ধোয়ার আগে ও পরে মাপের পরিবর্তন: (পরে − আগে) / আগে।
washes-rest = { $count ->
    [one] আরও { $count }টি জায়গায় পরিবর্তন মাপার ভুলের চেয়ে বেশি নয়।
   *[other] আরও { $count }টি জায়গায় পরিবর্তন মাপার ভুলের চেয়ে বেশি নয়।
}
washes-points = { $count ->
    [one] { $count }টি পয়েন্ট
   *[other] প্রতিটি পয়েন্ট ({ $count })
}

## Photographs of pieces

photographs-title = পিসগুলোর ছবি
photographs-add = ছবি যোগ করুন
photographs-add-button = যোগ করুন
photographs-missing = একটি ছবি বেছে নিন বা তুলুন।
photographs-many = একটি পিসের সর্বোচ্চ { $count }টি ছবি থাকে।

## Every value side by side

readings-title = সব মাপ পাশাপাশি
readings-state = পিসগুলোর অবস্থা
readings-wrong = কিছুই সংরক্ষণ হয়নি। চিহ্নিত মাপগুলো দেখুন।
readings-asks = এখনো সংরক্ষণ হয়নি। এগুলো আবার দেখুন:
readings-look = এখনো কিছু সংরক্ষণ হয়নি। মাপগুলো দেখে তারপর সংরক্ষণ করুন।
readings-save = সব সংরক্ষণ করুন
readings-empty = খালি করা ঘরে আগের মাপটিই থাকে।
readings-paste-title = পেস্ট করুন, বা শিট খুলুন
readings-paste = স্প্রেডশিট বা চিঠির মাপ
readings-paste-help = প্রতিটি পয়েন্টের জন্য একটি সারি, শুরুতে তার অক্ষর বা নাম। পিসের কলামের উপরে পিসের নম্বর থাকে, অথবা ক্রমে আসে।
readings-file = অথবা ফাইল: XLSX বা CSV
readings-first = নম্বর ছাড়া কলাম শুরু হয়
readings-fill = ঘরে বসান
readings-nothing-pasted = মাপ পেস্ট করুন, বা ফাইল বেছে নিন।
readings-filled = { $count ->
    [one] { $count }টি মাপ ঘরে বসানো হয়েছে।
   *[other] { $count }টি মাপ ঘরে বসানো হয়েছে।
}
readings-unknown = { $cell }: “{ $words }” এই চার্টের কোনো পয়েন্ট নয়, বা আগে এসেছে। এর মাপ বাদ দেওয়া হয়েছে।
readings-unreadable = { $cell }-এ পড়ার মতো সংখ্যা নেই: স্প্রেডশিট হয়তো এটিকে তারিখ বানিয়েছে।
readings-no-points = কোনো সারি পয়েন্টের অক্ষর বা নাম দিয়ে শুরু হয়নি, আর { $rows }টি সারি চার্টের { $points }টি পয়েন্টের সমান নয়। মাপের আগে অক্ষর লিখুন।
readings-columns = { $columns }টি কলামে মাপ আছে, আর বাছাই করা পিস থেকে পিস আছে { $pieces }টি। প্রতিটি কলামের উপরে পিসের নম্বর লিখুন।
readings-twice = দুটি কলাম পিস { $piece }-এর। একটি রাখুন।
