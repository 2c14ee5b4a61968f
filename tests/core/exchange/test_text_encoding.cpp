#include "core/exchange/text_encoding.h"

#include <gtest/gtest.h>

namespace chalk::exchange {
namespace {

TEST(TextEncoding, DetectsByMarksAndBytes)
{
    EXPECT_EQ(encodingOf("Name;Müller"), TextEncoding::Utf8);
    EXPECT_EQ(encodingOf("Name;M\xFCller"), TextEncoding::Windows1252);
    EXPECT_EQ(encodingOf("\xEF\xBB\xBFName"), TextEncoding::Utf8);
    EXPECT_EQ(encodingOf(QByteArray("\xFF\xFEN\0a\0", 6)), TextEncoding::Utf16Little);
    EXPECT_EQ(encodingOf(QByteArray("\xFE\xFF\0N\0a", 6)), TextEncoding::Utf16Big);
    EXPECT_EQ(encodingOf(QByteArray("N\0a\0m\0e\0", 8)), TextEncoding::Utf16Little);
    EXPECT_EQ(encodingOf(QByteArray("\0N\0a\0m\0e", 8)), TextEncoding::Utf16Big);
    for (const auto encoding : {TextEncoding::Utf8, TextEncoding::Utf16Little, TextEncoding::Utf16Big, TextEncoding::Windows1252}) {
        EXPECT_EQ(textEncodingOf(keyOf(encoding)), encoding);
    }
    EXPECT_EQ(textEncodingOf("ebcdic"), std::nullopt);
}

TEST(TextEncoding, BringsEverythingToUtf8)
{
    const QByteArray expected("Müller €");
    EXPECT_EQ(decoded("\xEF\xBB\xBFMüller €", TextEncoding::Utf8), expected);
    EXPECT_EQ(decoded("M\xFCller \x80", TextEncoding::Windows1252), expected);
    EXPECT_EQ(decoded(QByteArray("\xFF\xFEM\0\xFC\0l\0l\0e\0r\0 \0\xAC\x20", 18), TextEncoding::Utf16Little), expected);
    EXPECT_EQ(decoded(QByteArray("\0M\0\xFC\0l\0l\0e\0r\0 \x20\xAC", 16), TextEncoding::Utf16Big), expected);
}

TEST(TextEncoding, NamesThePlaceOfWhatIsUnsound)
{
    const auto text = decoded("ok\nM\xC3\xBCll\xFC", TextEncoding::Utf8);
    ASSERT_FALSE(text);
    EXPECT_EQ(text.error(), (CsvFault{2, 5, {}, "the text is no sound UTF-8"}));
    EXPECT_FALSE(decoded("abc", TextEncoding::Utf16Little));
}

// RFC 3629, 3, 4 and 10: no overlong forms, no surrogates, nothing above U+10FFFF, nothing cut short.
TEST(TextEncoding, TakesSoundUtf8Only)
{
    for (const char* sound : {"", "A", "\xC2\xA2", "\xE2\x82\xAC", "\xF0\xA3\x8E\xB4", "\xF4\x8F\xBF\xBF"}) {
        const QByteArray bytes(sound);
        EXPECT_EQ(firstUnsoundByte(bytes), bytes.size()) << sound;
    }
    for (const char* unsound : {"\xC0\x80", "\xC1\xBF", "\xE0\x80\x80", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\x80", "\xE2\x82", "\xC3" "A"}) {
        EXPECT_EQ(firstUnsoundByte(QByteArray("x").append(unsound)), 1) << unsound;
    }
}

}  // namespace
}  // namespace chalk::exchange
