#include "core/exchange/json_walk.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>
#include <array>
#include <cstddef>

namespace chalk::exchange {

namespace {

constexpr char kByteOrderMark[] = "\xEF\xBB\xBF";

bool isSpace(char c)
{
    return c == ' ' || c == '\n' || c == '\t' || c == '\r';
}

}  // namespace

void JsonWalk::run()
{
    m_at = m_text.startsWith(kByteOrderMark) ? 3 : 0;
    value();
}

void JsonWalk::meetValue(qsizetype) {}
void JsonWalk::meetField(qsizetype, bool) {}
void JsonWalk::meetString(qsizetype, const QByteArray&) {}
void JsonWalk::meetWord(qsizetype, const QByteArray&) {}

std::string JsonWalk::path() const
{
    std::string path;
    for (const Step& step : m_steps) {
        if (step.isField) {
            path.append(path.empty() ? "" : ".").append(step.field);
        } else {
            path += "[" + std::to_string(step.index) + "]";
        }
    }
    return path;
}

void JsonWalk::skipSpace()
{
    while (isSpace(here())) {
        ++m_at;
    }
}

QByteArray JsonWalk::string()
{
    const qsizetype start = m_at++;
    while (!isAtEnd() && here() != '"') {
        m_at += here() == '\\' ? 2 : 1;
    }
    ++m_at;
    const QByteArray written = part(start, std::min(m_at, m_text.size()));
    meetString(start, written);
    return written;
}

void JsonWalk::word()
{
    const qsizetype start = m_at;
    while (!isAtEnd() && here() != ',' && here() != ']' && here() != '}') {
        ++m_at;
    }
    qsizetype end = m_at;
    while (end > start && isSpace(m_text[end - 1])) {
        --end;
    }
    meetWord(start, part(start, end));
}

void JsonWalk::value()
{
    skipSpace();
    meetValue(m_at);
    if (here() == '{') {
        members([this](Names& names, int) { field(names); });
    } else if (here() == '[') {
        members([this](Names&, int index) { item(index); });
    } else if (here() == '"') {
        string();
    } else if (!isAtEnd()) {
        word();
    }
}

/// Goes through what stands between brackets, separated by commas.
template <class Member>
void JsonWalk::members(Member&& member)
{
    constexpr std::size_t kUsualBytes = 512;
    std::array<std::byte, kUsualBytes> usual;
    std::pmr::monotonic_buffer_resource memory(usual.data(), usual.size());
    Names names(&memory);
    ++m_at;
    for (int index = 0; !isAtEnd(); ++index) {
        skipSpace();
        if (here() == ']' || here() == '}') {
            ++m_at;
            return;
        }
        member(names, index);
        skipSpace();
        if (here() == ',') {
            ++m_at;
        }
    }
}

/// The text of a name as JSON writes it.
std::string_view JsonWalk::nameOf(const QByteArray& written)
{
    if (!written.contains('\\')) {
        return {written.constData() + 1, static_cast<std::size_t>(std::max(written.size(), qsizetype{2}) - 2)};
    }
    return m_decoded.emplace_back(QJsonDocument::fromJson("[" + written + "]").array().at(0).toString().toStdString());
}

void JsonWalk::field(Names& names)
{
    const qsizetype start = m_at;
    const std::string_view name = nameOf(string());
    m_steps.push_back({name});
    meetField(start, !names.insert(name).second);
    skipSpace();
    ++m_at;  // the colon
    value();
    m_steps.pop_back();
}

void JsonWalk::item(int index)
{
    m_steps.push_back({{}, index, false});
    value();
    m_steps.pop_back();
}

}  // namespace chalk::exchange
