### Mails about what waits for somebody, and who wants them.

mail-subject = { $count ->
    [one] আপনার জন্য { $count }টি কাজ অপেক্ষায় আছে
   *[other] আপনার জন্য { $count }টি কাজ অপেক্ষায় আছে
}
mail-hello = { $name }, আপনার জন্য এগুলো অপেক্ষায় আছে:
mail-chain = খতিয়ান: { $entries }টি এন্ট্রি, শেষটির হ্যাশ
mail-why = নতুন কিছু আপনার জন্য অপেক্ষায় থাকলে এই মেইল আসে। আপনার পাতায় বদলান:
me-mail = মেইল
me-mail-what = নতুন কিছু অপেক্ষায় থাকলে একটি মেইল। না চাইলে খালি রাখুন।
me-mail-address = ই-মেইল ঠিকানা
error-mail-address = name@example.org-এর মতো একটি ই-মেইল ঠিকানা লিখুন, নয়তো খালি রাখুন।
