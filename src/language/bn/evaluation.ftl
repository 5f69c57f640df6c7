### The evaluation of a sample: why its measurements are off, and what to do.

## Where

evaluation-fabric-along = { $fabric }, { $direction }
evaluation-some-points = { $count }টি পয়েন্ট
evaluation-whole-garment = পুরো গার্মেন্ট

## Causes

evaluation-proportional-shift = { $place }: লম্বা ও ছোট পয়েন্ট একই হারে সরেছে, { $share } %। কাপড় ছোট বা লম্বা হয়েছে, অথবা প্যাটার্নে তার হিসাব ভুল। সেখানে প্যাটার্ন × { $factor } করুন।
evaluation-constant-error = { $place }: লম্বা হোক বা ছোট, প্রতিটি পয়েন্ট একই পরিমাণে সরেছে, { $by }। সিম অ্যালাওয়েন্স ও কাটা দেখুন, অথবা যে ফিতায় মাপা হয়েছে।
evaluation-single-point = { $points }: { $size } সাইজে { $by } সরেছে, অন্য কিছুতে এর ব্যাখ্যা নেই। এই পয়েন্ট কীভাবে কাটা ও সেলাই হয় দেখুন।
evaluation-base-pattern = { $points }: মাপা সব সাইজে { $by } সরেছে। সেখানে বেস প্যাটার্ন ঠিক করুন।
evaluation-grading = { $place }: বেস সাইজ থেকে যত দূরে তত বেশি সরেছে; ধাপগুলো চার্টের থেকে { $share } % আলাদা। গ্রেডিং ঠিক করুন।
evaluation-size-pattern = { $place }: শুধু { $size } সাইজে { $by } সরেছে। এই সাইজের প্যাটার্ন দেখুন।
evaluation-one-piece = { $points }: শুধু পিস { $pieces }-এ { $by } সরেছে। আবার মাপুন; একই থাকলে এই পিস অন্যভাবে সেলাই হয়েছে।
evaluation-unsteady = { $points }: { $size } সাইজের পিসগুলোর পার্থক্য মাপার ভুলের চেয়ে বেশি। সেলাই দেখুন, অথবা কীভাবে মাপবেন ঠিক করুন।
evaluation-wrong-label = পিস { $pieces }-এ সাইজ { $size } লেখা, মাপে { $really }। লেবেল দেখুন, অথবা কোন প্যাটার্নে কাটা।
evaluation-swapped-sizes = পিস { $pieces } একে অন্যের সাইজ বহন করছে: প্রথমটি { $size } বলা, মাপে { $really }। লেবেল অদলবদল করুন।
evaluation-doubled = পিস { $pieces }, { $points }: যা হওয়ার কথা তার প্রায় দ্বিগুণ। অর্ধেকের বদলে পুরো ঘের লেখা হয়েছে: আবার মাপুন।
evaluation-halved = পিস { $pieces }, { $points }: যা হওয়ার কথা তার প্রায় অর্ধেক। পুরো ঘেরের বদলে অর্ধেক লেখা হয়েছে: আবার মাপুন।
evaluation-cm-as-inch = পিস { $pieces }, { $points }: ইঞ্চির জায়গায় সেন্টিমিটার লেখা হয়েছে।
evaluation-inch-as-cm = পিস { $pieces }, { $points }: সেন্টিমিটারের জায়গায় ইঞ্চি লেখা হয়েছে।
evaluation-ten-times = পিস { $pieces }, { $points }: যা হওয়ার কথা তার দশ গুণ। দশমিক চিহ্ন দেখুন।
evaluation-tenth = পিস { $pieces }, { $points }: যা হওয়ার কথা তার দশ ভাগের এক ভাগ। দশমিক চিহ্ন দেখুন।
evaluation-swapped-points = পিস { $pieces }: { $points }-এর মাপ একে অন্যের জায়গায়।

## Figures

evaluation-rests-on-one = এর ভিত্তি একটি মাপ।
evaluation-rests-on = এর ভিত্তি { $readings }টি মাপ, তার { $same }টি একই দিকে সরেছে। অর্ধেক সরেছিল { $before }-এর বেশি; এটি বাদ দিলে থাকে { $left }।

## What is not a cause

evaluation-again = পিস { $piece }, { $point }: টলারেন্সের বাইরে, কিন্তু মাপার ভুলের সীমার মধ্যে। আবার মাপুন।
evaluation-dispute = পিস { $piece }, { $point }: { $one } মেপেছে { $least }, { $other } মেপেছে { $most }। আগে কীভাবে মাপবেন ঠিক করুন: { $allowed } পর্যন্ত পার্থক্য চলে।
evaluation-few-points = { $place }: যথেষ্ট তথ্য নেই। সেখানে { $have }টি পয়েন্ট মাপা হয়েছে, কাপড় সরেছে কিনা বুঝতে { $need }টি লাগে।
evaluation-one-size = যথেষ্ট তথ্য নেই: শুধু { $size } সাইজ মাপা হয়েছে, তাই প্যাটার্ন ও গ্রেডিং আলাদা করা যায় না।
evaluation-one-piece-only = যথেষ্ট তথ্য নেই: { $size } সাইজের একটি পিস মাপা হয়েছে, তাই সেলাই ও প্যাটার্ন আলাদা করা যায় না।
evaluation-watch = { $out ->
    [0] { $point }: আগে ব্যর্থ ({ $rounds })। এখন টলারেন্সের মধ্যে: নজর রাখুন।
   *[other] { $point }: আগে ব্যর্থ ({ $rounds })। আবার { $measured }টির মধ্যে { $out }টিতে বাইরে।
}
evaluation-repeat-assumed = কিছুই দুইবার মাপা হয়নি। ধরে নেওয়া হয়েছে একই মাপ { $deviation }-এর মধ্যে আবার পাওয়া যায়।
evaluation-repeat-measurers = কয়েকজনের মাপা { $count }টি পয়েন্ট থেকে, একই মাপ { $deviation }-এর মধ্যে আবার পাওয়া যায়।
evaluation-repeat-pieces = একই সাইজের কয়েকটি পিসে থাকা { $count }টি পয়েন্ট থেকে, একই মাপ { $deviation }-এর মধ্যে আবার পাওয়া যায়।
evaluation-wash = { $place }: ধোয়ায় { $percent } %। সেখানে প্যাটার্ন × { $factor } করুন।
evaluation-wash-little = { $place }: ধোয়ায় { $percent } %, যা মাপার ভুলের চেয়ে বেশি নয়।

## On a round's page

evaluation-title = মাপ কী বলছে
evaluation-no-cause = কোনো কারণ বলা হচ্ছে না। কিছু বাইরে থাকলে তা মাপার ভুলের বেশি নয়, অথবা বলার মতো তথ্য কম।
evaluation-points-shown = কোথায় দেখা যায়
evaluation-suggested = প্যাটার্নের প্রস্তাবিত সংশোধন
evaluation-agree = আগে কীভাবে মাপবেন ঠিক করুন
evaluation-again-title = আবার মাপুন
evaluation-lacks-title = যথেষ্ট তথ্য নেই
evaluation-watch-title = নজরে রাখুন: আগের রাউন্ডে মেলেনি
evaluation-watch-word = নজরে রাখুন
evaluation-strips = পয়েন্ট অনুযায়ী পার্থক্য
evaluation-strips-how = ছায়া দেওয়া অংশ টলারেন্স, তার ভেতরের রেখা স্পেক। ● ভেতরে, ▲ বেশি, ▼ কম।
evaluation-strips-sides = ফাঁপা চিহ্ন কারখানার মাপ, ভরাট চিহ্ন ব্র্যান্ডের।
evaluation-strips-beyond = চিহ্নের পাশে তীর: ছবির সীমার বাইরে।
evaluation-within = { $count }টি পয়েন্ট টলারেন্সের ভেতরে
evaluation-by-size = সাইজ অনুযায়ী পার্থক্য
evaluation-by-size-how = রেখাটি প্রতি সাইজের গড় পার্থক্য জোড়ে। সমান রেখা: প্যাটার্ন। ওঠা বা নামা রেখা: গ্রেডিং।
evaluation-steps = সাইজের ধাপ
evaluation-from-to = থেকে, পর্যন্ত
evaluation-asked = চার্ট অনুযায়ী
evaluation-got = মাপা
evaluation-more = পার্থক্য
