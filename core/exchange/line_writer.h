#pragma once

#include <QByteArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QJsonValue>

#include <vector>

namespace chalk::exchange {

/// One object on one line, its fields sorted by name.
[[nodiscard]] inline QByteArray lineOf(const QJsonObject& object)
{
    return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

/// Writes a JSON object with a line for each field and for each item of its lists, so that versions of a file compare by line.
class LineWriter {
public:
    /// `depth` is how deep the object lies in its file, in steps of indentation.
    explicit LineWriter(int depth = 0) : m_indent(depth, ' ') {}

    void field(const char* name, const QJsonValue& value)
    {
        const QByteArray one = lineOf({{QLatin1String(name), value}});
        begin() += one.mid(1, one.size() - 2);
    }
    /// Items are written already, at two steps deeper than the object.
    void list(const char* name, const std::vector<QByteArray>& items)
    {
        begin() += QByteArray("\"") + name + "\":[";
        for (std::size_t i = 0; i < items.size(); ++i) {
            m_text += (i == 0 ? "\n  " : ",\n  ") + m_indent + items[i];
        }
        m_text += items.empty() ? QByteArray("]") : "\n " + m_indent + "]";
    }
    [[nodiscard]] QByteArray finished() const { return "{" + m_text + "\n" + m_indent + "}"; }

private:
    QByteArray& begin()
    {
        m_text += (m_text.isEmpty() ? "\n " : ",\n ") + m_indent;
        return m_text;
    }

    QByteArray m_indent;
    QByteArray m_text;
};

}  // namespace chalk::exchange
