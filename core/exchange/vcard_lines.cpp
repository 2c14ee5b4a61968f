#include "core/exchange/vcard_lines.h"

#include "core/exchange/text_encoding.h"

#include <QString>

#include <algorithm>

namespace chalk::exchange {

namespace {

/// A line of the text as it stands.
struct PhysicalLine {
    QByteArray text;
    int number = 1;
};

std::vector<PhysicalLine> physicalLines(const QByteArray& text)
{
    std::vector<PhysicalLine> lines;
    int number = 1;
    for (qsizetype at = 0; at < text.size(); ++number) {
        qsizetype end = at;
        while (end < text.size() && text[end] != '\n' && text[end] != '\r') {
            ++end;
        }
        lines.push_back({text.mid(at, end - at), number});
        at = end + (end + 1 < text.size() && text[end] == '\r' && text[end + 1] == '\n' ? 2 : 1);
    }
    return lines;
}

bool isQuotedPrintable(const QByteArray& line)
{
    return line.left(line.indexOf(':')).toUpper().contains("QUOTED-PRINTABLE");
}

/// Folded lines put together: a line that begins with a blank goes on with the one before it; of quoted-printable also one after a `=` at the end.
std::vector<PhysicalLine> unfoldedLines(const QByteArray& text)
{
    std::vector<PhysicalLine> lines;
    bool isSoftBreak = false;
    for (const PhysicalLine& line : physicalLines(text)) {
        if (isSoftBreak) {
            lines.back().text.chop(1);
            lines.back().text += line.text;
        } else if (!lines.empty() && (line.text.startsWith(' ') || line.text.startsWith('\t'))) {
            lines.back().text += line.text.mid(1);
        } else {
            lines.push_back(line);
        }
        isSoftBreak = isQuotedPrintable(lines.back().text) && lines.back().text.endsWith('=');
    }
    std::erase_if(lines, [](const PhysicalLine& line) { return line.text.trimmed().isEmpty(); });
    return lines;
}

/// Where `mark` stands first outside of quotes, from `from` on; the size where it does not.
qsizetype outsideQuotes(const QByteArray& text, const char* marks, qsizetype from)
{
    bool isQuoted = false;
    for (qsizetype at = from; at < text.size(); ++at) {
        isQuoted = text[at] == '"' ? !isQuoted : isQuoted;
        if (!isQuoted && QByteArray(marks).contains(text[at])) {
            return at;
        }
    }
    return text.size();
}

QByteArray withoutQuotes(const QByteArray& text)
{
    return text.size() >= 2 && text.startsWith('"') && text.endsWith('"') ? text.mid(1, text.size() - 2) : text;
}

VCardParameter parameterOf(const QByteArray& text)
{
    const qsizetype sign = outsideQuotes(text, "=", 0);
    if (sign == text.size()) {
        const QByteArray word = text.toUpper();
        const bool isEncoding = word == "QUOTED-PRINTABLE" || word == "BASE64" || word == "B";
        return {isEncoding ? "ENCODING" : "TYPE", {text}};
    }
    VCardParameter parameter{text.left(sign).toUpper(), {}};
    for (qsizetype at = sign + 1; at <= text.size();) {
        const qsizetype end = outsideQuotes(text, ",", at);
        parameter.values.push_back(withoutQuotes(text.mid(at, end - at)));
        at = end + 1;
    }
    return parameter;
}

int hexDigit(char letter)
{
    return letter >= '0' && letter <= '9' ? letter - '0' : letter >= 'A' && letter <= 'F' ? letter - 'A' + 10 : letter >= 'a' && letter <= 'f' ? letter - 'a' + 10 : -1;
}

/// RFC 2045, 6.7; what is no pair of digits behind a `=` stays as it is.
QByteArray fromQuotedPrintable(const QByteArray& text)
{
    QByteArray bytes;
    for (qsizetype at = 0; at < text.size(); ++at) {
        const bool isPair = text[at] == '=' && at + 2 < text.size() && hexDigit(text[at + 1]) >= 0 && hexDigit(text[at + 2]) >= 0;
        bytes += isPair ? static_cast<char>(hexDigit(text[at + 1]) * 16 + hexDigit(text[at + 2])) : text[at];
        at += isPair ? 2 : 0;
    }
    return bytes;
}

void undoEncoding(VCardLine& line)
{
    if (!line.has("ENCODING", "QUOTED-PRINTABLE")) {
        return;
    }
    line.value = fromQuotedPrintable(line.value);
    if (firstUnsoundByte(line.value) != line.value.size()) {
        line.value = decoded(line.value, TextEncoding::Windows1252).value_or(QByteArray());
    }
    line.value.replace("\r\n", "\n");
}

VCardLine lineOf(const PhysicalLine& physical)
{
    VCardLine line;
    line.line = physical.number;
    const QByteArray& text = physical.text;
    const qsizetype colon = outsideQuotes(text, ":", 0);
    if (colon == text.size()) {
        return line;
    }
    line.valueColumn = static_cast<int>(QString::fromUtf8(text.left(colon + 1)).size()) + 1;
    line.value = text.mid(colon + 1);
    const QByteArray head = text.left(colon);
    qsizetype at = outsideQuotes(head, ";", 0);
    const QByteArray name = head.left(at);
    const qsizetype point = name.lastIndexOf('.');
    line.group = point < 0 ? QByteArray() : name.left(point);
    line.name = name.mid(point + 1).trimmed().toUpper();
    while (at < head.size()) {
        const qsizetype end = outsideQuotes(head, ";", at + 1);
        line.parameters.push_back(parameterOf(head.mid(at + 1, end - at - 1)));
        at = end;
    }
    undoEncoding(line);
    return line;
}

}  // namespace

bool VCardLine::has(const char* parameter, const char* wanted) const
{
    return std::any_of(parameters.begin(), parameters.end(), [parameter, wanted](const VCardParameter& one) {
        return one.name == parameter && std::any_of(one.values.begin(), one.values.end(), [wanted](const QByteArray& own) { return own.compare(wanted, Qt::CaseInsensitive) == 0; });
    });
}

std::optional<QByteArray> VCardLine::first(const char* parameter) const
{
    const auto found = std::find_if(parameters.begin(), parameters.end(), [parameter](const VCardParameter& one) { return one.name == parameter; });
    return found == parameters.end() || found->values.empty() ? std::nullopt : std::optional(found->values.front());
}

std::vector<VCardLine> vcardLines(const QByteArray& text)
{
    std::vector<VCardLine> lines;
    for (const PhysicalLine& physical : unfoldedLines(text)) {
        lines.push_back(lineOf(physical));
    }
    return lines;
}

QByteArray unescaped(const QByteArray& value)
{
    QByteArray text;
    for (qsizetype at = 0; at < value.size(); ++at) {
        if (value[at] == '\\' && at + 1 < value.size()) {
            ++at;
            text += value[at] == 'n' || value[at] == 'N' ? '\n' : value[at];
        } else {
            text += value[at];
        }
    }
    return text;
}

std::vector<QByteArray> componentsOf(const QByteArray& value)
{
    std::vector<QByteArray> components(1);
    for (qsizetype at = 0; at < value.size(); ++at) {
        if (value[at] == ';') {
            components.emplace_back();
            continue;
        }
        components.back() += value[at];
        if (value[at] == '\\' && at + 1 < value.size()) {
            components.back() += value[++at];
        }
    }
    return components;
}

}  // namespace chalk::exchange
