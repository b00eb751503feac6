package leadlamp.words;

import static leadlamp.words.Rules.WORDS;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NamesTest {
    private static Name name(String name) {
        return Names.resolve(name, WORDS).orElseThrow(() -> new AssertionError(name + " is no name"));
    }

    @Test
    void a_word_of_a_part_is_its_name_and_the_property() {
        assertThat(name("cam gear pin form")).isEqualTo(new Name.PartWord("cam gear pin", "form"));
        assertThat(name("cam gear state")).isEqualTo(new Name.PartWord("cam gear", "state"));
        assertThat(name("piston as found state")).isEqualTo(new Name.PartWord("piston as found", "state"));
        assertThat(name("main shell class wanted")).isEqualTo(new Name.PartWord("main shell", "class wanted"));
        assertThat(name("intake gasket form")).as("what the kind may have").isEqualTo(new Name.PartWord("intake gasket", "form"));
    }

    @Test
    void a_sign_is_the_part_and_the_sign_and_its_asides_come_after() {
        assertThat(name("piston skirt scuffed")).isEqualTo(new Name.SignOf("piston skirt", "scuffed"));
        assertThat(name("piston skirt scuffed pattern")).isEqualTo(new Name.SignAside("piston skirt", "scuffed", "pattern"));
        assertThat(name("piston skirt polished as")).isEqualTo(new Name.SignAside("piston skirt", "polished", "as"));
        assertThat(name("piston skirt scuffed pattern").what()).isEqualTo("scuffed pattern");
        assertThat(name("joint face sealant in layers")).isEqualTo(new Name.SignOf("joint face", "sealant in layers"));
        assertThat(name("joint tool marks")).isEqualTo(new Name.SignOf("joint", "tool marks"));
    }

    @Test
    void a_value_is_its_quantity_with_its_mark() {
        assertThat(name("crankpin diameter")).isEqualTo(new Name.QuantityName("crankpin diameter", ""));
        assertThat(name("head bolt free length")).isEqualTo(new Name.QuantityName("head bolt free length", ""));
        assertThat(name("cylinder bore as found")).isEqualTo(new Name.QuantityName("cylinder bore", "as found"));
        assertThat(name("piston to head gap as trial").of()).isEqualTo("piston to head gap as trial");
        assertThat(name("crankpin diameter state")).isEqualTo(new Name.ReadingAside("crankpin diameter", "state"));
        assertThat(name("crankshaft end float figure")).isEqualTo(new Name.ReadingAside("crankshaft end float", "figure"));
        assertThat(name("gauge ratio")).as("a derived value, not a word of the gauge").isEqualTo(new Name.QuantityName("gauge ratio", ""));
    }

    @Test
    void a_joint_has_words_a_torque_and_what_was_said_in_its_place() {
        assertThat(name("joint lubricant")).isEqualTo(new Name.JointWord("lubricant"));
        assertThat(name("joint torque")).isEqualTo(new Name.JointTorque());
        assertThat(name("joint torque said")).isEqualTo(new Name.JointWord("torque said"));
    }

    @Test
    void a_line_of_the_sheet_is_a_joints_a_parts_or_a_sections() {
        assertThat(name("sheet joint lubricant")).isEqualTo(new Name.SheetWord("joint", "lubricant"));
        assertThat(name("sheet layout lash")).isEqualTo(new Name.SheetWord("layout", "lash"));
        assertThat(name("sheet layout fuel burns")).isEqualTo(new Name.SheetWord("layout", "fuel burns"));
        assertThat(name("sheet standard bore")).isEqualTo(new Name.SheetWord("standard", "bore"));
        assertThat(name("sheet cam gear pin form")).isEqualTo(new Name.SheetWord("cam gear pin", "form"));
        assertThat(name("sheet cam gear pin diameter")).isEqualTo(new Name.SheetWord("cam gear pin", "diameter"));
        assertThat(name("sheet materials connecting rod")).isEqualTo(new Name.SheetWord("materials", "connecting rod"));
        assertThat(name("sheet valves can touch pistons"))
                .isEqualTo(new Name.SheetWord("valves can touch pistons", "valves can touch pistons"));
        assertThat(name("sheet sensors reach")).isEqualTo(new Name.SheetWord("sensors", "reach"));
    }

    @Test
    void a_section_has_its_words() {
        assertThat(name("use duty")).isEqualTo(new Name.SectionWord("use", "duty"));
        assertThat(name("build past")).isEqualTo(new Name.SectionWord("build", "past"));
        assertThat(name("steps valve leak tested")).isEqualTo(new Name.SectionWord("steps", "valve leak tested"));
        assertThat(name("machining block face")).isEqualTo(new Name.SectionWord("machining", "block face"));
        assertThat(name("machining block face removed")).isEqualTo(new Name.SectionWord("machining", "block face removed"));
        assertThat(name("protection low oil pressure cut")).isEqualTo(new Name.SectionWord("protection", "low oil pressure cut"));
        assertThat(name("protection rev cut proved")).isEqualTo(new Name.SectionWord("protection", "rev cut proved"));
        assertThat(name("gauge kind")).isEqualTo(new Name.SectionWord("gauge", "kind"));
        assertThat(name("observations head")).isEqualTo(new Name.SectionWord("observations", "head"));
    }

    @Test
    void a_condition_and_a_word_of_whatever_is_asked_about() {
        assertThat(name("condition wet liners")).isEqualTo(new Name.ConditionName("wet liners"));
        assertThat(name("any part origin")).isEqualTo(new Name.AnyWord("any part", "origin"));
        assertThat(name("any reading")).isEqualTo(new Name.AnyWord("any reading", ""));
    }

    @Test
    void a_synonym_a_slip_of_the_pen_and_a_word_that_the_part_cannot_have_are_no_names() {
        for (String wrong : new String[] {"conrod bend", "cam gear pin from", "piston skirt scufed", "use dutty", "sheet layout lsh",
            "condition wet liner", "steps head fitted", "crankshaft form", "use note", "cam gear", "nonsense"}) {
            assertThat(Names.resolve(wrong, WORDS)).as(wrong).isEmpty();
        }
    }

    @Test
    void the_nearest_name_is_offered() {
        assertThat(Names.nearest("cam gear pin from", WORDS)).contains("cam gear pin form");
        assertThat(Names.nearest("piston skirt scufed", WORDS)).contains("piston skirt scuffed");
        assertThat(Names.nearest("sheet layout lsh", WORDS)).contains("sheet layout lash");
        assertThat(Names.nearest("condition wet liner", WORDS)).contains("condition wet liners");
        assertThat(Names.nearest("steps valve leak test", WORDS)).contains("steps valve leak tested");
        assertThat(Names.nearest("xyzzy", WORDS)).isEmpty();
    }
}
