#include "core/exchange/json_places.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <set>
#include <vector>

namespace chalk::exchange {

namespace {

/// The text of a string as JSON writes it.
QString decoded(const QByteArray& written)
{
    return written.contains('\\') ? QJsonDocument::fromJson("[" + written + "]").array().at(0).toString()
                                   : QString::fromUtf8(written.mid(1, written.size() - 2));
}

/// Walks through a sound JSON text and is told of every field and value. A walk that has what it wants ends itself.
class JsonWalk {
public:
    explicit JsonWalk(const QByteArray& text) : m_text(text) {}
    virtual ~JsonWalk() = default;
    JsonWalk(const JsonWalk&) = delete;
    JsonWalk& operator=(const JsonWalk&) = delete;

    void run() { value(); }

protected:
    /// A value begins at `offset`; `path()` names it.
    virtual void meetValue(qsizetype offset) = 0;
    /// A field of an object begins; `isRepeated` where the object had one of that name. `path()` names it.
    virtual void meetField(bool isRepeated) = 0;

    [[nodiscard]] std::string path() const
    {
        std::string path;
        for (const std::string& step : m_steps) {
            path += path.empty() && step.front() == '.' ? step.substr(1) : step;
        }
        return path;
    }
    void end() { m_at = m_text.size(); }

private:
    [[nodiscard]] bool isAtEnd() const { return m_at >= m_text.size(); }
    [[nodiscard]] char here() const { return isAtEnd() ? '\0' : m_text[m_at]; }

    void skipSpace()
    {
        while (!isAtEnd() && (here() == ' ' || here() == '\n' || here() == '\t' || here() == '\r')) {
            ++m_at;
        }
    }

    /// Goes past a string and answers it as written, with its quotes.
    QByteArray string()
    {
        const qsizetype start = m_at++;
        while (!isAtEnd() && here() != '"') {
            m_at += here() == '\\' ? 2 : 1;
        }
        ++m_at;
        return m_text.mid(start, m_at - start);
    }

    void value()
    {
        skipSpace();
        meetValue(m_at);
        switch (here()) {
        case '{':
            members([this](std::set<QString>& names, int) { field(names); });
            break;
        case '[':
            members([this](std::set<QString>&, int index) { item(index); });
            break;
        case '"':
            string();
            break;
        default:
            while (!isAtEnd() && here() != ',' && here() != ']' && here() != '}') {
                ++m_at;
            }
        }
    }

    /// Goes through what stands between brackets, separated by commas.
    template <class Member>
    void members(Member&& member)
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

    void field(std::set<QString>& names)
    {
        const QString name = decoded(string());
        m_steps.push_back("." + name.toStdString());
        meetField(!names.insert(name).second);
        skipSpace();
        ++m_at;  // the colon
        value();
        m_steps.pop_back();
    }

    void item(int index)
    {
        m_steps.push_back("[" + std::to_string(index) + "]");
        value();
        m_steps.pop_back();
    }

    const QByteArray& m_text;
    qsizetype m_at = 0;
    std::vector<std::string> m_steps;
};

/// Looks for the value that a path names.
class SearchForPath : public JsonWalk {
public:
    SearchForPath(const QByteArray& text, const std::string& path) : JsonWalk(text), m_wanted(path) {}
    [[nodiscard]] qsizetype nearest() const { return m_nearest; }

protected:
    void meetValue(qsizetype offset) override
    {
        const std::string here = path();
        const bool isAround = m_wanted.compare(0, here.size(), here) == 0 &&
                              (here.size() == m_wanted.size() || here.empty() || m_wanted[here.size()] == '.' || m_wanted[here.size()] == '[');
        if (isAround) {
            m_nearest = offset;
        }
        if (here.size() == m_wanted.size() && isAround) {
            end();
        }
    }
    void meetField(bool) override {}

private:
    const std::string& m_wanted;
    qsizetype m_nearest = 0;
};

/// Looks for a field that is there twice.
class SearchForRepeat : public JsonWalk {
public:
    using JsonWalk::JsonWalk;
    [[nodiscard]] const std::optional<std::string>& found() const { return m_found; }

protected:
    void meetValue(qsizetype) override {}
    void meetField(bool isRepeated) override
    {
        if (isRepeated && !m_found) {
            m_found = path();
            end();
        }
    }

private:
    std::optional<std::string> m_found;
};

}  // namespace

JsonPlace placeAt(const QByteArray& text, qsizetype offset)
{
    const QByteArray before = text.left(offset);
    const qsizetype lineStart = before.lastIndexOf('\n') + 1;
    return {static_cast<int>(before.count('\n')) + 1, static_cast<int>(QString::fromUtf8(before.mid(lineStart)).size()) + 1};
}

JsonPlace placeOf(const QByteArray& text, const std::string& path)
{
    SearchForPath search(text, path);
    search.run();
    return placeAt(text, search.nearest());
}

std::optional<std::string> repeatedField(const QByteArray& text)
{
    SearchForRepeat search(text);
    search.run();
    return search.found();
}

}  // namespace chalk::exchange
