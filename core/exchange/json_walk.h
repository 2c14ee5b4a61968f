#pragma once

#include <QByteArray>

#include <deque>
#include <memory_resource>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace chalk::exchange {

/// Walks through a JSON text that a parser took and tells of every field, value, string and word in the order in which they stand.
/// Who derives from it overrides what they want to hear of; a walk that has what it wants ends itself.
class JsonWalk {
public:
    /// `text` outlives the walk.
    explicit JsonWalk(const QByteArray& text) : m_text(text) {}
    virtual ~JsonWalk() = default;
    JsonWalk(const JsonWalk&) = delete;
    JsonWalk& operator=(const JsonWalk&) = delete;

    void run();

protected:
    /// A value begins at `offset`; `path()` names it.
    virtual void meetValue(qsizetype offset);
    /// A field of an object begins at `offset`; `isRepeated` where the object had one of that name. `path()` names it.
    virtual void meetField(qsizetype offset, bool isRepeated);
    /// A string, the name of a field or a value, as written, with its quotes. It lasts as long as the text.
    virtual void meetString(qsizetype offset, const QByteArray& written);
    /// A number, true, false or null, as written.
    virtual void meetWord(qsizetype offset, const QByteArray& written);

    /// Where the walk is: `lifts[2].events[14].sets[0].rir`, empty at the top.
    [[nodiscard]] std::string path() const;
    void end() { m_at = m_text.size(); }

private:
    /// Of the fields that an object has so far, as they are read. They lie in the text, or in m_decoded.
    using Names = std::pmr::set<std::string_view>;
    /// A step of the way to where the walk is.
    struct Step {
        std::string_view field;
        int index = 0;  ///< of an item, where there is no field
        bool isField = true;
    };

    [[nodiscard]] bool isAtEnd() const { return m_at >= m_text.size(); }
    [[nodiscard]] char here() const { return isAtEnd() ? '\0' : m_text[m_at]; }
    void skipSpace();
    /// As written, with its quotes: a part of the text.
    QByteArray string();
    void word();
    void value();
    /// A part of the text, without a copy.
    [[nodiscard]] QByteArray part(qsizetype from, qsizetype to) const { return QByteArray::fromRawData(m_text.constData() + from, to - from); }
    [[nodiscard]] std::string_view nameOf(const QByteArray& written);
    template <class Member>
    void members(Member&& member);
    void field(Names& names);
    void item(int index);

    const QByteArray& m_text;
    qsizetype m_at = 0;
    std::vector<Step> m_steps;
    std::deque<std::string> m_decoded;  ///< names that are written with escapes
};

}  // namespace chalk::exchange
