### What the program's own values are called.

## Sections of a spec

section-header = হেডার
section-sizes = সাইজ
section-drawings = ড্রয়িং
section-points = মাপের পয়েন্ট
section-colourways = পার্ট ও কালারওয়ে
section-materials = ম্যাটেরিয়াল
section-construction = সেলাইয়ের নিয়ম
section-artwork = আর্টওয়ার্ক
section-labels = লেবেল ও কেয়ার
section-packing = প্যাকিং

## Who wears it


## Where it is sold


## The state of the garment that the numbers hold for

measured-as-sewn = সেলাইয়ের পরে যেমন আছে
measured-after-finish = গার্মেন্ট ফিনিশের পরে
measured-after-washes = { $count ->
    [one] { $count } বার ধোয়ার পরে
   *[other] { $count } বার ধোয়ার পরে
}

## Units

unit-cm = cm
unit-mm = mm
unit-inch = ইঞ্চি

## Drawings


## Points of measure


## Readiness

severity-error = ভুল
severity-warning = সতর্কতা

## Who takes part

side-brand = ব্র্যান্ড
side-factory = ফ্যাক্টরি
role-owner = মালিক
role-designer = ডিজাইনার
role-viewer = দর্শক
role-merchandiser = মার্চেন্ডাইজার
role-sample-room = স্যাম্পল রুম
role-inspector = পরিদর্শক

## Revisions

standing-current = চলতি
standing-superseded = নতুন রিভিশন এসেছে
standing-withdrawn = প্রত্যাহার করা
agreement-shared = শেয়ার করা
agreement-acknowledged = প্রাপ্তি স্বীকৃত
agreement-signed-by-factory = ফ্যাক্টরি সই করেছে
agreement-signed-by-brand = ব্র্যান্ড সই করেছে
agreement-signed-by-both = দুই পক্ষ সই করেছে

## Threads

thread-kind-question = প্রশ্ন
thread-kind-must-fix = অবশ্যই ঠিক করতে হবে
thread-kind-suggestion = পরামর্শ
thread-kind-concession = ছাড়ের অনুরোধ
thread-state-open = খোলা
thread-state-answered = উত্তর দেওয়া হয়েছে
thread-state-agreed = একমত
thread-state-changed = রিভিশন { $revision }-এ বদলানো হয়েছে
thread-state-verified = রিভিশন { $revision }-এর স্যাম্পলে যাচাই হয়েছে
thread-state-closed = বন্ধ
thread-state-granted = ছাড় দেওয়া হয়েছে

## Sample rounds

round-kind-proto = প্রোটো
round-kind-fit = ফিট
round-kind-size-set = সাইজ সেট
round-kind-pre-production = প্রি-প্রোডাকশন (PP)
round-kind-top-of-production = টপ অব প্রোডাকশন (TOP)
round-state-requested = চাওয়া হয়েছে
round-state-in-work = কাজ চলছে
round-state-dispatched = পাঠানো হয়েছে
round-state-received = পাওয়া গেছে
round-state-measured = মাপা হয়েছে
round-materials-actual = স্পেকের উপকরণ
round-materials-substitute = বিকল্প উপকরণ
round-outcome-approved = অনুমোদিত
round-outcome-approved-with-changes = পরিবর্তনসহ অনুমোদিত
round-outcome-remake = আবার বানাতে হবে
round-outcome-cancelled = বাতিল
wash-before = ধোয়ার আগে
wash-after = ধোয়ার পরে
skip-absent = এই পিসে এটি নেই
skip-unfinished = এখনো সেলাই হয়নি
skip-damaged = পিসটি এখানে নষ্ট
skip-unclear = কীভাবে মাপতে হয় বুঝি না

## Bulk inspections

inspection-critical = ক্রিটিক্যাল
inspection-major = মেজর
inspection-minor = মাইনর
inspection-open = চলছে
inspection-accepted = গ্রহণ
inspection-rejected = প্রত্যাখ্যান
inspection-released = ছাড়পত্র দেওয়া
inspection-concession = ছাড় দিয়ে পাস
inspection-rework = মেরামতে ফেরত
inspection-refused = নেওয়া হয়নি

## Acts in the ledger

act-create = স্টাইল শুরু
act-publish = রিভিশন প্রকাশ
act-withdraw = রিভিশন প্রত্যাহার
act-share = ফ্যাক্টরির সাথে শেয়ার
act-unshare = ফ্যাক্টরির সাথে শেয়ার শেষ
act-acknowledge = রিভিশনের প্রাপ্তি স্বীকার
act-ask = আলোচনা শুরু
act-message = বার্তা পাঠানো
act-thread-move = আলোচনা এগিয়েছে
act-request-round = স্যাম্পল রাউন্ড চাওয়া
act-round-move = স্যাম্পল রাউন্ড এগিয়েছে
act-measure = মাপ নেওয়া
act-skip = পয়েন্ট বাদ
act-photograph = পিসের ছবি
act-decide = স্যাম্পল রাউন্ডের সিদ্ধান্ত
act-submit = নমুনা জমা
act-approve = নমুনার সিদ্ধান্ত
act-seal = স্যাম্পল সিল
act-begin-inspection = বাল্ক পরিদর্শন শুরু
act-inspect = পিস দেখা
act-conclude-inspection = বাল্ক পরিদর্শন শেষ
act-decide-inspection = লটের সিদ্ধান্ত
act-sign = সই
act-translate = অনুবাদ
act-translate-message = বার্তার অনুবাদ
act-erase = ব্যক্তিগত লেখা মোছা
