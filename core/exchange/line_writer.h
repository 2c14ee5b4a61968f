#pragma once

#include <QByteArray>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QJsonValue>

#include <string>
#include <vector>

namespace chalk::exchange {

/// One object on one line, its fields sorted by name.
[[nodiscard]] inline QByteArray lineOf(const QJsonObject& object)
{
    return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

/// An object and its text in a file; what LineWriter::lines writes is in the text alone.
struct WrittenObject {
    QJsonObject object;
    QByteArray text;
};

/// On one line.
[[nodiscard]] inline WrittenObject inLine(const QJsonObject& object)
{
    return {object, lineOf(object)};
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
        m_object.insert(QLatin1String(name), value);
    }
    /// Items are written already, at two steps deeper than the object.
    void list(const char* name, const std::vector<WrittenObject>& items)
    {
        QJsonArray objects;
        std::vector<std::string> texts;
        for (const WrittenObject& item : items) {
            objects.append(item.object);
            texts.push_back(item.text.toStdString());
        }
        lines(name, texts);
        m_object.insert(QLatin1String(name), objects);
    }
    /// The same of items that are only text, which the object does not get: there may be very many.
    void lines(const char* name, const std::vector<std::string>& items)
    {
        begin() += QByteArray("\"") + name + "\":[";
        for (std::size_t i = 0; i < items.size(); ++i) {
            m_text.append(i == 0 ? "\n  " : ",\n  ").append(m_indent).append(items[i].data(), static_cast<qsizetype>(items[i].size()));
        }
        m_text += items.empty() ? QByteArray("]") : "\n " + m_indent + "]";
    }
    [[nodiscard]] WrittenObject finished() const { return {m_object, "{" + m_text + "\n" + m_indent + "}"}; }
    /// The same as a whole file, which ends with its line.
    [[nodiscard]] WrittenObject finishedFile() const { return {m_object, "{" + m_text + "\n}\n"}; }

private:
    QByteArray& begin()
    {
        m_text += (m_text.isEmpty() ? "\n " : ",\n ") + m_indent;
        return m_text;
    }

    QByteArray m_indent;
    QByteArray m_text;
    QJsonObject m_object;
};

}  // namespace chalk::exchange
