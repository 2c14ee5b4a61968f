#include "core/seal/text_seal.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>

namespace chalk::seal {

TEST(TextSeal, OpensInItsPlaceWithItsKeyOnly)
{
    const SealKey key = SealKey::random();
    const QString text = QStringLiteral("left knee, after the fall in March: ü \u4e2d");
    const QString sealed = sealText(key, "form/1", text);
    EXPECT_TRUE(isSealedText(sealed));
    EXPECT_FALSE(sealed.contains(QStringLiteral("knee")));
    EXPECT_EQ(openText(key, "form/1", sealed).value(), text);
    EXPECT_EQ(openText(key, "form/2", sealed).error(), SealFault::Damaged);
    EXPECT_EQ(openText(SealKey::random(), "form/1", sealed).error(), SealFault::Damaged);
    EXPECT_NE(sealText(key, "form/1", text), sealed) << "the same text is another one each time";
}

TEST(TextSeal, WhatIsEmptyStaysEmptyAndWhatIsPlainIsRefused)
{
    const SealKey key = SealKey::random();
    EXPECT_EQ(sealText(key, "a", QString()), QString());
    EXPECT_EQ(openText(key, "a", QString()).value(), QString());
    EXPECT_EQ(openText(key, "a", QStringLiteral("plain")).error(), SealFault::Damaged);
    EXPECT_EQ(openBytes(key, "a", "plain").error(), SealFault::Damaged);
    EXPECT_FALSE(isSealedText(QStringLiteral("seal1:")));
}

TEST(TextSeal, NoLetterOfItCanBeAltered)
{
    const SealKey key = SealKey::random();
    const QString sealed = sealText(key, "a", QStringLiteral("knee"));
    for (qsizetype at = 0; at < sealed.size(); ++at) {
        for (const char letter : {'A', 'B', '=', '!'}) {
            QString altered = sealed;
            altered[at] = QLatin1Char(letter);
            const auto opened = openText(key, "a", altered);
            EXPECT_TRUE(altered == sealed || !opened) << "letter " << at;
        }
        EXPECT_FALSE(at > 0 && openText(key, "a", sealed.left(at))) << "cut after " << at;
    }
}

RC_GTEST_PROP(TextSealProperty, AnyBytesComeBack, (const std::string& plain, const std::string& place))
{
    const SealKey key = SealKey::random();
    const QByteArray bytes = QByteArray::fromStdString(plain);
    const QByteArray at = QByteArray::fromStdString(place);
    RC_ASSERT(openBytes(key, at, sealBytes(key, at, bytes)).value() == bytes);
    RC_ASSERT(bytes.isEmpty() || !openBytes(key, at + "x", sealBytes(key, at, bytes)));
}

RC_GTEST_PROP(TextSealProperty, AnyLettersComeBack, (const std::vector<char16_t>& letters))
{
    QString text;
    for (const char16_t letter : letters) {
        text.append(QChar::isSurrogate(letter) ? QChar(u'x') : QChar(letter));
    }
    const SealKey key = SealKey::random();
    RC_ASSERT(openText(key, "p", sealText(key, "p", text)).value() == text);
}

/// draft-irtf-cfrg-xchacha-03, appendix A.3.1: AEAD_XChaCha20_Poly1305. Written down from memory.
TEST(TextSeal, TheVectorOfTheDraftOpens)
{
    QByteArray keyBytes;
    QByteArray nonce;
    for (int i = 0; i < 32; ++i) {
        keyBytes.append(static_cast<char>(0x80 + i));
    }
    for (int i = 0; i < 24; ++i) {
        nonce.append(static_cast<char>(0x40 + i));
    }
    const QByteArray place = QByteArray::fromHex("50515253c0c1c2c3c4c5c6c7");
    const QByteArray sealed = QByteArray::fromHex(
        "bd6d179d3e83d43b9576579493c0e939572a1700252bfaccbed2902c21396cbb731c7f1b0b4aa6440bf3a82f4eda7e39ae64c6708c54c216cb96b72e1213b4522f8c9ba40db5d945b11b69b982c1"
        "bb9e3f3fac2bc369488f76b2383565d3fff921f9664c97637da9768812f615c68b13b52ec0875924c1c7987947deafd8780acf49");
    const SealKey key = SealKey::fromBytes(reinterpret_cast<const unsigned char*>(keyBytes.constData()));
    EXPECT_EQ(openBytes(key, place, "\x01" "seal1:" + nonce + sealed).value(),
              "Ladies and Gentlemen of the class of '99: If I could offer you only one tip for the future, sunscreen would be it.");
}

}  // namespace chalk::seal
