#include "core/tables/folded_text.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>

namespace chalk::tables {

namespace {

/// Characters that are all written as the same plain letters.
struct PlainLetters {
    std::uint32_t first;
    std::uint32_t last;
    const char* letters;
};

/// Latin-1 Supplement and Latin Extended-A, by the names of the characters in the Unicode standard.
constexpr PlainLetters kPlainLetters[]{
    {0xC0, 0xC5, "a"},   {0xC6, 0xC6, "ae"},  {0xC7, 0xC7, "c"},   {0xC8, 0xCB, "e"},   {0xCC, 0xCF, "i"},   {0xD0, 0xD0, "d"},   {0xD1, 0xD1, "n"},
    {0xD2, 0xD6, "o"},   {0xD8, 0xD8, "o"},   {0xD9, 0xDC, "u"},   {0xDD, 0xDD, "y"},   {0xDE, 0xDE, "th"},  {0xDF, 0xDF, "ss"},  {0xE0, 0xE5, "a"},
    {0xE6, 0xE6, "ae"},  {0xE7, 0xE7, "c"},   {0xE8, 0xEB, "e"},   {0xEC, 0xEF, "i"},   {0xF0, 0xF0, "d"},   {0xF1, 0xF1, "n"},   {0xF2, 0xF6, "o"},
    {0xF8, 0xF8, "o"},   {0xF9, 0xFC, "u"},   {0xFD, 0xFD, "y"},   {0xFE, 0xFE, "th"},  {0xFF, 0xFF, "y"},   {0x100, 0x105, "a"}, {0x106, 0x10D, "c"},
    {0x10E, 0x111, "d"}, {0x112, 0x11B, "e"}, {0x11C, 0x123, "g"}, {0x124, 0x127, "h"}, {0x128, 0x131, "i"}, {0x132, 0x133, "ij"}, {0x134, 0x135, "j"},
    {0x136, 0x138, "k"}, {0x139, 0x142, "l"}, {0x143, 0x14B, "n"}, {0x14C, 0x151, "o"}, {0x152, 0x153, "oe"}, {0x154, 0x159, "r"}, {0x15A, 0x161, "s"},
    {0x162, 0x167, "t"}, {0x168, 0x173, "u"}, {0x174, 0x175, "w"}, {0x176, 0x178, "y"}, {0x179, 0x17E, "z"}, {0x17F, 0x17F, "s"}};

constexpr unsigned char kAscii = 0x80;

/// How many bytes the character takes that begins with `lead`; 1 for what begins none.
std::size_t bytesOf(unsigned char lead)
{
    return lead < 0xC0 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
}

bool isCombiningMark(std::uint32_t letter)
{
    return letter >= 0x300 && letter <= 0x36F;
}

bool isPunctuation(std::uint32_t letter)
{
    return (letter >= kAscii && letter < 0xC0 && letter != 0xAA && letter != 0xB5 && letter != 0xBA) || letter == 0xD7 || letter == 0xF7 ||
           (letter >= 0x2000 && letter <= 0x206F) || letter == 0x3000 || letter == 0xFEFF;
}

/// A character of two bytes in small letters, where it is Greek or Cyrillic.
std::uint32_t smallLetter(std::uint32_t letter)
{
    const bool isGreekCapital = letter >= 0x391 && letter <= 0x3A9;
    const bool isCyrillicCapital = letter >= 0x410 && letter <= 0x42F;
    return isGreekCapital || isCyrillicCapital ? letter + 0x20 : letter >= 0x400 && letter <= 0x40F ? letter + 0x50 : letter;
}

void addBlank(std::string& folded)
{
    if (!folded.empty() && folded.back() != ' ') {
        folded += ' ';
    }
}

void addAscii(std::string& folded, char letter)
{
    if (letter >= 'A' && letter <= 'Z') {
        folded += static_cast<char>(letter - 'A' + 'a');
    } else if ((letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9')) {
        folded += letter;
    } else {
        addBlank(folded);
    }
}

void addOther(std::string& folded, std::string_view bytes)
{
    std::uint32_t letter = bytes.size() == 2 ? static_cast<std::uint32_t>(bytes[0] & 0x1F) << 6 | static_cast<std::uint32_t>(bytes[1] & 0x3F) : 0;
    if (bytes.size() == 3) {
        letter = static_cast<std::uint32_t>(bytes[0] & 0x0F) << 12 | static_cast<std::uint32_t>(bytes[1] & 0x3F) << 6 | static_cast<std::uint32_t>(bytes[2] & 0x3F);
    }
    const auto* plain = std::find_if(std::begin(kPlainLetters), std::end(kPlainLetters),
                                     [letter](const PlainLetters& one) { return letter >= one.first && letter <= one.last; });
    if (plain != std::end(kPlainLetters)) {
        folded += plain->letters;
    } else if (isPunctuation(letter)) {
        addBlank(folded);
    } else if (bytes.size() == 2 && !isCombiningMark(letter)) {
        const std::uint32_t small = smallLetter(letter);
        folded += static_cast<char>(0xC0 | small >> 6);
        folded += static_cast<char>(0x80 | (small & 0x3F));
    } else if (!isCombiningMark(letter)) {
        folded += bytes;
    }
}

}  // namespace

std::string foldedText(std::string_view text)
{
    std::string folded;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = std::min(bytesOf(static_cast<unsigned char>(text[at])), text.size() - at);
        if (static_cast<unsigned char>(text[at]) < kAscii) {
            addAscii(folded, text[at]);
        } else {
            addOther(folded, text.substr(at, length));
        }
        at += length;
    }
    if (!folded.empty() && folded.back() == ' ') {
        folded.pop_back();
    }
    return folded;
}

std::vector<std::string> wordsOf(std::string_view text)
{
    const std::string folded = foldedText(text);
    std::vector<std::string> words;
    for (std::size_t at = 0; at < folded.size();) {
        const std::size_t end = std::min(folded.find(' ', at), folded.size());
        words.push_back(folded.substr(at, end - at));
        at = end + 1;
    }
    return words;
}

std::string sortedWords(std::string_view text)
{
    std::vector<std::string> words = wordsOf(text);
    std::sort(words.begin(), words.end());
    std::string joined;
    for (const std::string& word : words) {
        joined += joined.empty() ? word : ' ' + word;
    }
    return joined;
}

int editDistance(std::string_view a, std::string_view b, int most)
{
    if (std::abs(static_cast<int>(a.size()) - static_cast<int>(b.size())) > most) {
        return most + 1;
    }
    std::vector<int> twoAbove;
    std::vector<int> above(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) {
        above[j] = static_cast<int>(j);
    }
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::vector<int> here(b.size() + 1, static_cast<int>(i));
        for (std::size_t j = 1; j <= b.size(); ++j) {
            here[j] = std::min({above[j] + 1, here[j - 1] + 1, above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
                here[j] = std::min(here[j], twoAbove[j - 2] + 1);
            }
        }
        if (*std::min_element(here.begin(), here.end()) > most) {
            return most + 1;
        }
        twoAbove = std::move(above);
        above = std::move(here);
    }
    return std::min(above.back(), most + 1);
}

}  // namespace chalk::tables
