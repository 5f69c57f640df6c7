### Mails about what waits for somebody, and who wants them.

mail-subject = { $count ->
    [one] { $count } काम आपकी प्रतीक्षा में है
   *[other] { $count } काम आपकी प्रतीक्षा में हैं
}
mail-hello = नमस्ते { $name }, ये आपकी प्रतीक्षा में हैं:
mail-chain = बही: { $entries } प्रविष्टियाँ, अंतिम का हैश
mail-why = जब कुछ नया आपकी प्रतीक्षा में हो तो यह मेल आती है। अपने पन्ने पर बदलें:
me-mail = मेल
me-mail-what = जब कुछ नया प्रतीक्षा में हो तो एक मेल। न चाहिए तो खाली छोड़ें।
me-mail-address = ई-मेल पता
error-mail-address = name@example.org जैसा ई-मेल पता लिखें, या खाली छोड़ें।
