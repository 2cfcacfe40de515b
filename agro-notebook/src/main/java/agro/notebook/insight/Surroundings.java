package agro.notebook.insight;

import java.util.List;

/** What hints may ask about the code around a slip. */
interface Surroundings {

  /**
   * The names that could stand at a position.
   *
   * @param code the code of the cell
   * @param at where a name begins
   * @return the names
   */
  List<String> namesAt(String code, int at);

  /**
   * How what has a name can be called.
   *
   * @param code the code of the cell
   * @param at where the name begins
   * @param name the name
   * @return one signature for each overload
   */
  List<String> signaturesAt(String code, int at, String name);

  /**
   * The names of all types that could be imported.
   *
   * @return the index
   */
  TypeIndex index();
}
