#include "core/exchange/json_walk.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace chalk::exchange {

namespace {

constexpr char kByteOrderMark[] = "\xEF\xBB\xBF";

/// The text of a string as JSON writes it.
QString decoded(const QByteArray& written)
{
    return written.contains('\\') ? QJsonDocument::fromJson("[" + written + "]").array().at(0).toString()
                                   : QString::fromUtf8(written.mid(1, written.size() - 2));
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
    for (const std::string& step : m_steps) {
        path += path.empty() && step.front() == '.' ? step.substr(1) : step;
    }
    return path;
}

void JsonWalk::skipSpace()
{
    while (here() == ' ' || here() == '\n' || here() == '\t' || here() == '\r') {
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
    const QByteArray written = m_text.mid(start, m_at - start);
    meetString(start, written);
    return written;
}

void JsonWalk::word()
{
    const qsizetype start = m_at;
    while (!isAtEnd() && here() != ',' && here() != ']' && here() != '}') {
        ++m_at;
    }
    meetWord(start, m_text.mid(start, m_at - start).trimmed());
}

void JsonWalk::value()
{
    skipSpace();
    meetValue(m_at);
    if (here() == '{') {
        members([this](std::set<QString>& names, int) { field(names); });
    } else if (here() == '[') {
        members([this](std::set<QString>&, int index) { item(index); });
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
    std::set<QString> names;
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

void JsonWalk::field(std::set<QString>& names)
{
    const qsizetype start = m_at;
    const QString name = decoded(string());
    m_steps.push_back("." + name.toStdString());
    meetField(start, !names.insert(name).second);
    skipSpace();
    ++m_at;  // the colon
    value();
    m_steps.pop_back();
}

void JsonWalk::item(int index)
{
    m_steps.push_back("[" + std::to_string(index) + "]");
    value();
    m_steps.pop_back();
}

}  // namespace chalk::exchange
