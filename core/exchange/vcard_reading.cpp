#include "core/exchange/vcard_reading.h"

#include "core/clients/profile.h"
#include "core/exchange/vcard_lines.h"
#include "core/tables/cell_reading.h"
#include "core/tables/folded_text.h"

#include <QList>

#include <algorithm>

namespace chalk::exchange {

namespace {

using tables::ListedPerson;

/// A number or an address, and how much its card prefers it: the less the more.
struct Preferred {
    QByteArray text;
    int rank = 1000;
};

constexpr int kPreferredWord = 0;    // TYPE=pref of 3.0
constexpr int kLastPreference = 100; // PREF of 4.0 is 1 to 100
constexpr int kUsual = 101;

int rankOf(const VCardLine& line)
{
    const auto preference = line.first("PREF");
    bool isNumber = false;
    const int number = preference ? preference->toInt(&isNumber) : 0;
    if (isNumber && number >= 1 && number <= kLastPreference) {
        return number;
    }
    return line.has("TYPE", "pref") ? kPreferredWord : kUsual;
}

void prefer(Preferred& best, const VCardLine& line, const QByteArray& text)
{
    const int rank = rankOf(line);
    if (!text.isEmpty() && rank < best.rank) {
        best = {text, rank};
    }
}

QByteArray blanksTrimmed(const VCardLine& line)
{
    return unescaped(line.value).trimmed();
}

/// `tel:+1-555-555-5555;ext=5555` as a number (RFC 3966); others as they stand.
QByteArray phoneIn(const VCardLine& line)
{
    QByteArray text = blanksTrimmed(line);
    if (!text.toLower().startsWith("tel:")) {
        return text;
    }
    text = text.mid(4);
    const qsizetype extension = text.toLower().indexOf(";ext=");
    const QByteArray number = text.split(';').front();
    return extension < 0 ? number : number + " x " + text.mid(extension + 5).split(';').front();
}

/// `Dr. John Q. Public, Esq.` of `Public;John;Quinlan,Paul;Mr.;Esq.`: given, additional and family names.
QByteArray nameOfComponents(const QByteArray& value)
{
    const auto components = componentsOf(value);
    QByteArray name;
    for (const std::size_t index : {std::size_t{1}, std::size_t{2}, std::size_t{0}}) {
        QByteArray part = index < components.size() ? components[index] : QByteArray();
        part = unescaped(part.replace("\\,", "\x01").replace(',', ' ').replace("\x01", "\\,")).trimmed();
        name += name.isEmpty() || part.isEmpty() ? part : ' ' + part;
    }
    return name;
}

/// One card on its way.
class CardReading {
public:
    CardReading(tables::TableContent& content, int file, base::Date today) : m_content(content), m_file(file), m_today(today) {}

    void begin(const VCardLine& line);
    void add(const VCardLine& line);
    void end(const VCardLine& line);
    void finish();
    [[nodiscard]] bool isOpen() const { return m_isOpen; }
    void fail(int line, int column, const QByteArray& property, std::string reason);

private:
    void readBirth(const VCardLine& line);
    void readVersion(const VCardLine& line);
    void keep();

    tables::TableContent& m_content;
    int m_file;
    base::Date m_today;
    bool m_isOpen = false;
    bool m_isFaulty = false;
    bool m_isPerson = true;
    ListedPerson m_person;
    QByteArray m_components;
    Preferred m_phone;
    Preferred m_mail;
    Preferred m_name;
};

void CardReading::fail(int line, int column, const QByteArray& property, std::string reason)
{
    m_content.faults.push_back({{m_file, line, column}, property.toStdString(), std::move(reason)});
    m_isFaulty = true;
}

void CardReading::begin(const VCardLine& line)
{
    if (m_isOpen) {
        fail(m_person.place.line, 1, "BEGIN", "the card that begins here has no END");
        ++m_content.rows;
    }
    m_isOpen = true;
    m_isFaulty = false;
    m_isPerson = true;
    m_person = {};
    m_person.place = {m_file, line.line, 1};
    m_components.clear();
    m_phone = {};
    m_mail = {};
    m_name = {};
}

void CardReading::readBirth(const VCardLine& line)
{
    const QByteArray text = line.value.trimmed();
    if (text.isEmpty() || line.has("VALUE", "text") || text.startsWith("--")) {
        return;
    }
    QByteArray day = text.split('T').front().trimmed();
    if (day.size() == 4 || (day.size() == 7 && day[4] == '-')) {
        return;  // RFC 6350, 4.3.1: a year, or a year and a month, are no day
    }
    if (day.size() == 8 && !day.contains('-')) {
        day.insert(6, '-').insert(4, '-');
    }
    const auto date = base::Date::parse(day.toStdString());
    if (!date) {
        const auto parts = tables::dayParts(day.toStdString());
        fail(line.line, line.valueColumn, "BDAY",
             parts && parts->isYearFirst ? "there is no such day as " + text.toStdString() : "must be a day such as 1996-04-15 or 19960415");
    } else if (const auto fault = clients::faultOfBirth(*date, m_today)) {
        fail(line.line, line.valueColumn, "BDAY", fault->reason);
    } else {
        m_person.birthDate = date;
    }
}

void CardReading::readVersion(const VCardLine& line)
{
    const QByteArray version = line.value.trimmed();
    if (version != "3.0" && version != "4.0" && version != "2.1") {
        fail(line.line, line.valueColumn, "VERSION", "must be 3.0 or 4.0");
    }
}

void CardReading::add(const VCardLine& line)
{
    if (line.name == "FN") {
        prefer(m_name, line, blanksTrimmed(line));
    } else if (line.name == "N") {
        m_components = line.value;
    } else if (line.name == "BDAY") {
        readBirth(line);
    } else if (line.name == "TEL") {
        prefer(m_phone, line, phoneIn(line));
    } else if (line.name == "EMAIL") {
        prefer(m_mail, line, blanksTrimmed(line));
    } else if (line.name == "NOTE" && m_person.note.empty()) {
        m_person.note = blanksTrimmed(line).toStdString();
    } else if (line.name == "VERSION") {
        readVersion(line);
    } else if (line.name == "KIND") {
        m_isPerson = line.value.trimmed().toLower() == "individual";
    } else if (line.name.isEmpty()) {
        fail(line.line, 1, {}, "the line has no name and no colon");
    }
}

void CardReading::end(const VCardLine& line)
{
    if (!m_isOpen) {
        fail(line.line, 1, "END", "no card begins before this end");
        return;
    }
    m_isOpen = false;
    ++m_content.rows;
    if (m_isPerson && !m_isFaulty) {
        keep();
    }
}

void CardReading::keep()
{
    m_person.name = (m_name.text.isEmpty() ? nameOfComponents(m_components) : m_name.text).toStdString();
    m_person.phone = m_phone.text.toStdString();
    m_person.mail = m_mail.text.toStdString();
    if (tables::sortedWords(m_person.name).empty()) {
        fail(m_person.place.line, 1, "FN", "the card names nobody");
        return;
    }
    m_content.personFor(m_person);
}

void CardReading::finish()
{
    if (m_isOpen) {
        ++m_content.rows;
        fail(m_person.place.line, 1, "BEGIN", "the card that begins here has no END");
    }
}

}  // namespace

bool isVCard(const QByteArray& text)
{
    return text.left(64).trimmed().toUpper().startsWith("BEGIN:VCARD");
}

void readVCards(const QByteArray& text, tables::TableContent& content, int file, base::Date today)
{
    CardReading card(content, file, today);
    for (const VCardLine& line : vcardLines(text)) {
        if (line.name == "BEGIN" && line.value.trimmed().toUpper() == "VCARD") {
            card.begin(line);
        } else if (line.name == "END" && line.value.trimmed().toUpper() == "VCARD") {
            card.end(line);
        } else if (card.isOpen()) {
            card.add(line);
        } else {
            card.fail(line.line, 1, line.name, "stands outside of any card");
        }
    }
    card.finish();
}

}  // namespace chalk::exchange
