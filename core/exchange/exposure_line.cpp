#include "core/exchange/exposure_line.h"

#include "core/exchange/entry_fields.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/number_text.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>

namespace chalk::exchange {

namespace {

bool isWrittenAsItIs(char c)
{
    return c >= ' ' && c <= '~' && c != '"' && c != '\\';
}

void appendText(std::string& line, std::string_view value)
{
    if (std::all_of(value.begin(), value.end(), isWrittenAsItIs)) {
        line.append(1, '"').append(value).append(1, '"');
        return;
    }
    const QByteArray inList = QJsonDocument(QJsonArray{textOf(value)}).toJson(QJsonDocument::Compact);
    line.append(inList.data() + 1, static_cast<std::size_t>(inList.size()) - 2);
}

/// Appends an object field by field.
class ObjectText {
public:
    explicit ObjectText(std::string& line) : m_line(line) { m_line.push_back('{'); }

    void name(const char* name)
    {
        m_line.append(m_isFirst ? "\"" : ",\"").append(name).append("\":");
        m_isFirst = false;
    }
    void operator()(const char* name, bool value)
    {
        this->name(name);
        m_line.append(value ? "true" : "false");
    }
    void operator()(const char* name, std::string_view value)
    {
        this->name(name);
        appendText(m_line, value);
    }
    template <class Number>
    void operator()(const char* name, Number value)
    {
        this->name(name);
        appendNumber(m_line, value);
    }
    void close() { m_line.push_back('}'); }

private:
    std::string& m_line;
    bool m_isFirst = true;
};

void appendSets(std::string& line, const std::vector<progression::SetRecord>& sets, lifts::Measure measure)
{
    line.push_back('[');
    for (const progression::SetRecord& set : sets) {
        ObjectText object(line);
        eachField(set, measure, object);
        object.close();
        line.push_back(',');
    }
    if (!sets.empty()) {
        line.pop_back();
    }
    line.push_back(']');
}

}  // namespace

std::string exposureLine(const DocumentEvent& entry, lifts::Measure measure)
{
    std::string line;
    ObjectText object(line);
    eachField(entry, object, [&](const std::vector<progression::SetRecord>& sets) {
        object.name("sets");
        appendSets(line, sets, measure);
    });
    object.close();
    return line;
}

}  // namespace chalk::exchange
