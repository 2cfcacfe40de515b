package agro.notebook.install;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class JavaProgramTest {

  @Test
  void theRunningJavaIsAJdk() {
    var java = JavaProgram.ask(JavaProgram.running().toString()).orElseThrow();
    assertThat(java.lacking()).isEmpty();
    assertThat(java.feature()).isEqualTo(Runtime.version().feature());
    assertThat(java.isTooOld()).isFalse();
  }

  @Test
  void aJreLacksTheCompiler() {
    var jre = JavaProgram.parse("java.base@17.0.15\njava.instrument@17.0.15\n").orElseThrow();
    assertThat(jre.lacking()).containsExactly("jdk.compiler", "jdk.jshell");
  }

  @Test
  void versionsOfAllKinds() {
    assertThat(JavaProgram.parse("java.base@11").orElseThrow().isTooOld()).isTrue();
    assertThat(JavaProgram.parse("java.base@26-ea").orElseThrow().feature()).isEqualTo(26);
    assertThat(JavaProgram.parse("java.base@25.0.1+8-LTS").orElseThrow().feature()).isEqualTo(25);
  }

  @Test
  void whatIsNoJavaIsNone() {
    assertThat(JavaProgram.ask("no-such-program")).isEmpty();
    assertThat(JavaProgram.parse("Unrecognized option: --list-modules")).isEmpty();
    assertThat(JavaProgram.parse("")).isEmpty();
  }
}
