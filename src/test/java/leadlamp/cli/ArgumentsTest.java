package leadlamp.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ArgumentsTest {
    private static final Map<String, String> OPTIONS = Map.of("--as", "a form", "--brief", "");

    @Test
    void an_option_is_taken_in_either_form_and_anywhere() throws Complaint {
        assertThat(of("a.yaml", "--as", "json").value("--as")).contains("json");
        assertThat(of("--as=json", "a.yaml").value("--as")).contains("json");
        assertThat(of("--as=json", "a.yaml").words()).containsExactly("a.yaml");
        assertThat(of("a.yaml", "--brief").has("--brief")).isTrue();
    }

    @Test
    void after_two_dashes_all_are_words() throws Complaint {
        assertThat(of("--", "--brief", "-x").words()).containsExactly("--brief", "-x");
    }

    @Test
    void an_unknown_option_names_the_nearest() {
        assertThatThrownBy(() -> of("--breif")).hasMessage("There is no option \"--breif\". Did you mean --brief? "
                + "Known: --as, --brief.");
    }

    @Test
    void an_option_without_what_it_wants_says_what_that_is() {
        assertThatThrownBy(() -> of("a.yaml", "--as")).hasMessage("--as wants a form after it.");
        assertThatThrownBy(() -> of("--brief=1")).hasMessage("--brief stands alone and takes nothing after it.");
        assertThatThrownBy(() -> of("--brief", "--brief")).hasMessage("--brief stands twice.");
    }

    private static Arguments of(String... typed) throws Complaint {
        TreeMap<String, String> sorted = new TreeMap<>(OPTIONS);
        return Arguments.of(List.of(typed), sorted);
    }
}
