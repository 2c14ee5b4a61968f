#include "core/exchange/text_encoding.h"

#include "core/base/enum_keys.h"

#include <QString>
#include <QStringDecoder>

#include <array>

namespace chalk::exchange {

namespace {

constexpr std::array<std::string_view, 4> kEncodingKeys{"utf-8", "utf-16le", "utf-16be", "windows-1252"};
constexpr unsigned kFirstOfWindows = 0x80;

/// What the bytes 0x80 to 0x9F are in Windows-1252, by Unicode's table CP1252.TXT, from memory. The five that it leaves out stay as they are.
constexpr std::array<char16_t, 32> kWindowsLetters{0x20AC, 0x81,   0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
                                                   0x2039, 0x0152, 0x8D,   0x017D, 0x8F,   0x90,   0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
                                                   0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x9D,   0x017E, 0x0178};

QByteArray fromWindows(const QByteArray& bytes)
{
    QString text = QString::fromLatin1(bytes);
    for (QChar& letter : text) {
        if (letter.unicode() >= kFirstOfWindows && letter.unicode() < kFirstOfWindows + kWindowsLetters.size()) {
            letter = QChar(kWindowsLetters[letter.unicode() - kFirstOfWindows]);
        }
    }
    return text.toUtf8();
}

CsvFault faultAt(const QByteArray& bytes, qsizetype at, const char* reason)
{
    constexpr unsigned kTopBits = 0xC0;
    constexpr unsigned kContinues = 0x80;
    CsvFault fault{1, 1, {}, reason};
    for (qsizetype i = 0; i < at; ++i) {
        if (bytes[i] == '\n') {
            ++fault.line;
            fault.column = 1;
        } else if ((static_cast<unsigned char>(bytes[i]) & kTopBits) != kContinues) {
            ++fault.column;
        }
    }
    return fault;
}

/// Whether every other byte, from `first` on, is zero in most of a sample.
bool isZeroEveryOther(const QByteArray& bytes, qsizetype first)
{
    const qsizetype most = std::min<qsizetype>(bytes.size(), 2000);
    int zeros = 0;
    int all = 0;
    for (qsizetype i = first; i < most; i += 2) {
        zeros += bytes[i] == '\0' ? 1 : 0;
        ++all;
    }
    return all > 1 && zeros * 10 > all * 7;
}

/// How many bytes follow a lead byte, and the least code point that they may say; nothing for what leads nothing.
struct Sequence {
    int following = 0;
    std::uint32_t least = 0;
    std::uint32_t bits = 0;
};

std::optional<Sequence> sequenceOf(unsigned char lead)
{
    if (lead < 0x80) {
        return Sequence{0, 0, lead};
    }
    if (lead >= 0xC2 && lead < 0xE0) {
        return Sequence{1, 0x80, lead & 0x1FU};
    }
    if (lead >= 0xE0 && lead < 0xF0) {
        return Sequence{2, 0x800, lead & 0x0FU};
    }
    return lead >= 0xF0 && lead < 0xF5 ? std::optional(Sequence{3, 0x10000, lead & 0x07U}) : std::nullopt;
}

CsvResult<QByteArray> fromUtf16(const QByteArray& bytes, QStringConverter::Encoding encoding)
{
    QStringDecoder decoder(encoding, QStringConverter::Flag::Stateless);
    const QString text = decoder(bytes);
    if (decoder.hasError() || bytes.size() % 2 != 0) {
        return tl::make_unexpected(CsvFault{1, 1, {}, "the text is no sound UTF-16"});
    }
    return text.toUtf8();
}

}  // namespace

std::string_view keyOf(TextEncoding encoding)
{
    return base::keyIn(kEncodingKeys, encoding);
}

std::optional<TextEncoding> textEncodingOf(std::string_view key)
{
    return base::enumOf<TextEncoding>(kEncodingKeys, key);
}

qsizetype firstUnsoundByte(const QByteArray& bytes)
{
    for (qsizetype at = 0; at < bytes.size();) {
        const auto sequence = sequenceOf(static_cast<unsigned char>(bytes[at]));
        if (!sequence || at + sequence->following >= bytes.size()) {
            return at;
        }
        std::uint32_t letter = sequence->bits;
        for (int i = 1; i <= sequence->following; ++i) {
            const auto byte = static_cast<unsigned char>(bytes[at + i]);
            if ((byte & 0xC0U) != 0x80U) {
                return at;
            }
            letter = letter << 6 | (byte & 0x3FU);
        }
        if (letter < sequence->least || letter > 0x10FFFF || (letter >= 0xD800 && letter <= 0xDFFF)) {
            return at;
        }
        at += 1 + sequence->following;
    }
    return bytes.size();
}

TextEncoding encodingOf(const QByteArray& bytes)
{
    if (bytes.startsWith("\xFF\xFE")) {
        return TextEncoding::Utf16Little;
    }
    if (bytes.startsWith("\xFE\xFF")) {
        return TextEncoding::Utf16Big;
    }
    if (bytes.startsWith("\xEF\xBB\xBF")) {
        return TextEncoding::Utf8;
    }
    if (isZeroEveryOther(bytes, 1)) {
        return TextEncoding::Utf16Little;
    }
    if (isZeroEveryOther(bytes, 0)) {
        return TextEncoding::Utf16Big;
    }
    return firstUnsoundByte(bytes) == bytes.size() ? TextEncoding::Utf8 : TextEncoding::Windows1252;
}

CsvResult<QByteArray> decoded(const QByteArray& bytes, TextEncoding encoding)
{
    switch (encoding) {
    case TextEncoding::Utf8: {
        const qsizetype unsound = firstUnsoundByte(bytes);
        if (unsound != bytes.size()) {
            return tl::make_unexpected(faultAt(bytes, unsound, "the text is no sound UTF-8"));
        }
        return bytes.startsWith("\xEF\xBB\xBF") ? bytes.mid(3) : bytes;
    }
    case TextEncoding::Utf16Little:
        return fromUtf16(bytes, QStringConverter::Utf16LE);
    case TextEncoding::Utf16Big:
        return fromUtf16(bytes, QStringConverter::Utf16BE);
    case TextEncoding::Windows1252:
        return fromWindows(bytes);
    }
    return bytes;
}

}  // namespace chalk::exchange
