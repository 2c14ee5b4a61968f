#include "core/exchange/json_text.h"

#include "core/exchange/json_walk.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <optional>
#include <string_view>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

/// Goes past digits; false where there is none.
bool skipDigits(std::string_view& text)
{
    const std::size_t start = text.size();
    while (!text.empty() && text.front() >= '0' && text.front() <= '9') {
        text.remove_prefix(1);
    }
    return text.size() < start;
}

bool skip(std::string_view& text, std::string_view anyOf)
{
    const bool isThere = !text.empty() && anyOf.find(text.front()) != std::string_view::npos;
    if (isThere) {
        text.remove_prefix(1);
    }
    return isThere;
}

/// RFC 8259, section 6: no leading zeros, no bare point.
bool isJsonNumber(std::string_view text)
{
    skip(text, "-");
    if (!skip(text, "0") && !skipDigits(text)) {
        return false;
    }
    if (skip(text, ".") && !skipDigits(text)) {
        return false;
    }
    if (skip(text, "eE")) {
        skip(text, "+-");
        if (!skipDigits(text)) {
            return false;
        }
    }
    return text.empty();
}

/// Looks for the first thing that a lenient parser lets pass.
class SearchForLooseness : public JsonWalk {
public:
    using JsonWalk::JsonWalk;
    [[nodiscard]] const std::optional<JsonTextFault>& found() const { return m_found; }

protected:
    void meetField(qsizetype offset, bool isRepeated) override
    {
        if (isRepeated) {
            take({offset, path(), "is there twice"});
        }
    }
    void meetString(qsizetype offset, const QByteArray& written) override
    {
        for (qsizetype i = 0; i < written.size(); ++i) {
            if (static_cast<unsigned char>(written[i]) < 0x20) {
                take({offset + i, {}, "is no JSON: a control character in a text"});
            }
            if (written[i] == '\\') {
                ++i;
                if (i < written.size() && !QByteArrayView("\"\\/bfnrtu").contains(written[i])) {
                    take({offset + i - 1, {}, fmt::format("is no JSON: \\{} is no escape", written[i])});
                }
            }
        }
    }
    void meetWord(qsizetype offset, const QByteArray& written) override
    {
        const bool isWord = written == "true" || written == "false" || written == "null";
        if (!isWord && !isJsonNumber({written.constData(), static_cast<std::size_t>(written.size())})) {
            take({offset, {}, fmt::format("is no JSON: {} is no number", written.left(40).toStdString())});
        }
    }

private:
    void take(JsonTextFault fault)
    {
        if (!m_found) {
            m_found = std::move(fault);
            end();
        }
    }

    std::optional<JsonTextFault> m_found;
};

}  // namespace

tl::expected<QJsonValue, JsonTextFault> parseJsonText(const QByteArray& text)
{
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(text, &error);
    if (error.error != QJsonParseError::NoError) {
        return tl::make_unexpected(JsonTextFault{error.offset, {}, "is no JSON: " + error.errorString().toStdString()});
    }
    SearchForLooseness search(text);
    search.run();
    if (search.found()) {
        return tl::make_unexpected(*search.found());
    }
    return document.isObject() ? QJsonValue(document.object()) : QJsonValue(document.array());
}

}  // namespace chalk::exchange
