#include "core/tables/table_field.h"

#include "core/base/enum_keys.h"
#include "core/tables/folded_text.h"

#include <vector>

namespace chalk::tables {

namespace {

constexpr std::array<std::string_view, kFields> kFieldKeys{
    "name",  "first_name", "last_name", "birth_date", "phone",    "mail", "goal", "unit",         "body_mass", "sessions_per_week", "coach", "started",
    "notes", "day",        "exercise",  "load",       "reps",     "sets", "set",  "rir",          "rest",      "session_note",      "minutes"};

/// Headings of a field, folded and parted by bars.
struct HeadingWords {
    Field field;
    std::string_view words;
};

constexpr HeadingWords kHeadings[]{
    {Field::Name, "name|client|client name|full name|customer|athlete|trainee|member|person|kunde|kundin|klient|teilnehmer|mitglied|vollstandiger name|nom complet|"
                  "nombre completo|cliente|nome completo|klant|naam|namn|kund"},
    {Field::FirstName, "first name|firstname|given name|forename|vorname|prenom|nombre|nome|voornaam|fornamn"},
    {Field::LastName, "last name|lastname|surname|family name|nachname|familienname|nom|nom de famille|apellido|apellidos|cognome|achternaam|efternamn"},
    {Field::BirthDate, "birth date|birthdate|date of birth|birthday|born|dob|geburtsdatum|geburtstag|geboren|geb datum|date de naissance|ne le|fecha de nacimiento|"
                       "nacimiento|data di nascita|geboortedatum|fodelsedatum|fodelsedag"},
    {Field::Phone, "phone|telephone|mobile|phone number|cell|tel|telefon|handy|mobil|telefonnummer|mobile number|portable|telefono|movil|cellulare|telefoon|mobiel"},
    {Field::Mail, "mail|email|e mail|email address|e mail address|mail address|e mail adresse|mailadresse|courriel|adresse e mail|correo|correo electronico|"
                  "posta elettronica|e post|epost"},
    {Field::Goal, "goal|goals|aim|objective|ziel|ziele|objectif|objetivo|obiettivo|doel|mal"},
    {Field::Unit, "unit|units|kg lb|einheit|unite|unidad|unita|eenheid|enhet"},
    {Field::BodyMass, "body mass|body weight|bodyweight|bodymass|mass|korpergewicht|poids du corps|poids corporel|peso corporal|peso corporeo|lichaamsgewicht|kroppsvikt"},
    {Field::SessionsPerWeek, "sessions per week|sessions a week|per week|times a week|weekly sessions|sessions week|einheiten pro woche|trainings pro woche|"
                             "seances par semaine|sesiones por semana|sedute a settimana|sessies per week|pass per vecka"},
    {Field::Coach, "coach|trainer|instructor|trainerin|entraineur|entrenador|allenatore|tranare"},
    {Field::StartedOn, "started|start|start date|started on|since|member since|joined|client since|beginn|startdatum|seit|debut|inicio|inizio|sinds|startade"},
    {Field::ClientNote, "notes|client notes|remarks|about|history|training history|notizen|anmerkungen|remarques|notas|note cliente|opmerkingen|anteckningar"},
    {Field::Day, "day|date|session date|training date|workout date|when|datum|tag|jour|fecha|dia|data|giorno|dag"},
    {Field::Exercise, "exercise|movement|lift|exercise name|ubung|ubungsname|exercice|mouvement|ejercicio|esercizio|oefening|ovning"},
    {Field::Load, "load|weight|kg|lb|lbs|weight kg|weight lb|weight lbs|load kg|load lb|gewicht|last|charge|poids|carga|peso|carico|belasting|vikt"},
    {Field::Reps, "reps|repetitions|rep|repeats|amount|wiederholungen|wdh|repetitions faites|repeticiones|ripetizioni|herhalingen|repetitioner"},
    {Field::Sets, "sets|number of sets|set count|satze|anzahl satze|series|nombre de series|serie|numero di serie|antal set"},
    {Field::SetNumber, "set|set number|set no|set order|satz|satz nr|satznummer|serie no|numero de serie|set nummer"},
    {Field::Rir, "rir|reps in reserve|reserve|left in reserve|repetitions in reserve|in reserve|reserve reps"},
    {Field::Rest, "rest|rest s|rest seconds|rest sec|rest time|pause|pausa|pausenzeit|repos|descanso|recupero|rust|vila"},
    {Field::SessionNote, "note|session note|session notes|comment|comments|remark|notiz|bemerkung|kommentar|commentaire|comentario|nota|commento|opmerking|anteckning"},
    {Field::Minutes, "minutes|duration|length|min|session minutes|duration min|dauer|minuten|duree|duracion|durata|duur|tid|minuter"}};

bool hasWords(std::string_view list, std::string_view words)
{
    for (std::size_t at = 0; at < list.size();) {
        const std::size_t end = std::min(list.find('|', at), list.size());
        if (list.substr(at, end - at) == words) {
            return true;
        }
        at = end + 1;
    }
    return false;
}

std::optional<Field> fieldOfWords(std::string_view words)
{
    for (const HeadingWords& heading : kHeadings) {
        if (!words.empty() && hasWords(heading.words, words)) {
            return heading.field;
        }
    }
    return std::nullopt;
}

}  // namespace

std::string_view keyOf(Field field)
{
    return base::keyIn(kFieldKeys, field);
}

std::optional<Field> fieldOf(std::string_view key)
{
    return base::enumOf<Field>(kFieldKeys, key);
}

std::optional<Field> fieldOfHeading(std::string_view heading)
{
    const std::size_t bracket = heading.find_first_of("([");
    const std::string own = foldedText(heading.substr(0, bracket));
    if (const auto field = fieldOfWords(own)) {
        return field;
    }
    if (const auto field = fieldOfWords(foldedText(heading))) {
        return field;
    }
    std::string key(heading);
    return fieldOf(key);
}

}  // namespace chalk::tables
