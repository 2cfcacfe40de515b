package agro.notebook.display;

import agro.report.InputProblem;
import agro.working.HtmlText;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.Objects;

/**
 * A picture to show: a file of points or lines, and what it shows in words for a reader who cannot
 * see it. Immutable.
 *
 * <pre>{@code
 * Picture.read(Path.of("trap.jpg")).withAlternative("A delta trap in an apple tree").shownAt(400)
 * }</pre>
 */
public final class Picture {

  private final PictureFormat format;
  private final byte[] file;
  private final String alternative;
  private final int width;

  private Picture(PictureFormat format, byte[] file, String alternative, int width) {
    this.format = format;
    this.file = file;
    this.alternative = alternative;
    this.width = width;
  }

  private static Picture of(PictureFormat format, byte[] file) {
    return new Picture(format, file.clone(), "A picture without a description", 0);
  }

  /**
   * A picture from the bytes of a PNG file.
   *
   * @param file the whole file
   * @return the picture
   */
  public static Picture png(byte[] file) {
    return of(PictureFormat.PNG, file);
  }

  /**
   * A picture from the bytes of a JPEG file.
   *
   * @param file the whole file
   * @return the picture
   */
  public static Picture jpeg(byte[] file) {
    return of(PictureFormat.JPEG, file);
  }

  /**
   * A picture from the bytes of a GIF file.
   *
   * @param file the whole file
   * @return the picture
   */
  public static Picture gif(byte[] file) {
    return of(PictureFormat.GIF, file);
  }

  /**
   * A picture from an SVG document. Scripts in it are not run.
   *
   * @param document the document
   * @return the picture
   */
  public static Picture svg(String document) {
    return of(PictureFormat.SVG, document.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * A picture from points in memory.
   *
   * @param image the points
   * @return the picture
   */
  public static Picture of(BufferedImage image) {
    var bundle = ImageFiles.bundle(image);
    var png = Base64.getDecoder().decode(bundle.get(MimeBundle.PNG).orElseThrow());
    return png(png).withAlternative(bundle.plainText());
  }

  /**
   * A picture from the bytes of a file whose format is seen from its first bytes.
   *
   * @param file the whole file
   * @return the picture
   * @throws InputProblem when it is no PNG, JPEG, GIF or SVG file
   */
  public static Picture of(byte[] file) {
    return of(
        PictureFormat.of(file)
            .orElseThrow(
                () ->
                    InputProblem.of(file.length + " bytes that begin like no picture")
                        .expected("a PNG, JPEG, GIF or SVG file")
                        .because("a browser shows no other pictures")
                        .mend("save the picture in one of these formats")),
        file);
  }

  /**
   * A picture from a file whose format is seen from its first bytes.
   *
   * @param file a PNG, JPEG, GIF or SVG file
   * @return the picture, described by the name of the file
   * @throws InputProblem when it is no such file
   * @throws UncheckedIOException when it cannot be read
   */
  public static Picture read(Path file) {
    try {
      return of(Files.readAllBytes(file)).withAlternative("Picture " + file.getFileName());
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the picture " + file + " cannot be read", unreadable);
    }
  }

  /**
   * This picture with a description.
   *
   * @param words what it shows, in a sentence
   * @return a new picture
   */
  public Picture withAlternative(String words) {
    return new Picture(format, file, Objects.requireNonNull(words, "words"), width);
  }

  /**
   * This picture at a width of its own.
   *
   * @param points width on the page in CSS pixels, at least 1
   * @return a new picture
   */
  public Picture shownAt(int points) {
    if (points < 1) {
      throw new IllegalArgumentException("a picture is at least 1 point wide, not " + points);
    }
    return new Picture(format, file, alternative, points);
  }

  /**
   * The picture in its formats.
   *
   * @return HTML that holds the whole file, the file itself, and the description
   */
  public MimeBundle bundle() {
    var base64 = Base64.getEncoder().encodeToString(file);
    var html =
        "<img src=\"data:"
            + format.mediaType()
            + ";base64,"
            + base64
            + "\" alt=\""
            + HtmlText.escape(alternative)
            + "\""
            + (width > 0 ? " width=\"" + width + "\"" : "")
            + " style=\"max-width:100%;height:auto\">";
    var content = format == PictureFormat.SVG ? new String(file, StandardCharsets.UTF_8) : base64;
    return MimeBundle.of(MimeBundle.HTML, html)
        .with(format.mediaType(), content)
        .with(MimeBundle.TEXT, alternative);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Picture picture
        && format == picture.format
        && Arrays.equals(file, picture.file)
        && alternative.equals(picture.alternative)
        && width == picture.width;
  }

  @Override
  public int hashCode() {
    return Objects.hash(format, Arrays.hashCode(file), alternative, width);
  }

  @Override
  public String toString() {
    return alternative;
  }
}
