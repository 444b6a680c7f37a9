using System.Text.Json;
using GroveSpec.Conformance.Tests.Drawn;
using GroveSpec.Conformance.Tests.Outside;
using GroveSpec.Publishing.Raster;

namespace GroveSpec.Conformance.Tests.Pictures;

/// <summary>Three programs that turn a drawing into a picture, each a pixel of its own to a pixel of the drawing, all with the built-in faces.</summary>
internal static class Renderers
{
    /// <summary>The project's own way, by Skia.</summary>
    /// <param name="svg">The drawing.</param>
    /// <returns>The picture.</returns>
    public static GreyPicture Skia(string svg) => GreyPicture.FromPng(PngWriter.Write(svg, 1));

    /// <summary>By librsvg.</summary>
    /// <param name="svg">The drawing.</param>
    /// <returns>The picture.</returns>
    public static GreyPicture Librsvg(string svg)
    {
        using var scratch = new ScratchFolder();
        var drawing = scratch.Write("drawing.svg", svg);
        var picture = Path.Combine(scratch.Folder, "drawing.png");
        var fonts = scratch.Write("fonts.conf", $"""
            <?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd">
            <fontconfig><dir>{BuiltInFaces.Folder}</dir><cachedir>{scratch.Folder}</cachedir></fontconfig>
            """);
        OutsideProgram.Librsvg.Run(["--background-color=white", "--output", picture, drawing], ("FONTCONFIG_FILE", fonts));
        return GreyPicture.FromPng(File.ReadAllBytes(picture));
    }

    /// <summary>By Chromium, all in one run since it takes seconds to start.</summary>
    /// <param name="drawings">The drawings, drawn with <see cref="BuiltInFaces.Rules"/> so that they carry the faces.</param>
    /// <returns>A picture for each.</returns>
    public static IReadOnlyList<GreyPicture> Chromium(IReadOnlyList<string> drawings)
    {
        using var answer = Browser.Evaluate(
            """
            const pictures = [];
            for (const drawing of input) {
              const image = new Image();
              image.src = URL.createObjectURL(new Blob([drawing], { type: "image/svg+xml" }));
              await image.decode();
              const canvas = document.createElement("canvas");
              canvas.width = image.naturalWidth;
              canvas.height = image.naturalHeight;
              const context = canvas.getContext("2d");
              context.fillStyle = "white";
              context.fillRect(0, 0, canvas.width, canvas.height);
              context.drawImage(image, 0, 0);
              // The faces that a drawing carries are only sure to be there the second time.
              await new Promise((done) => setTimeout(done, 50));
              context.fillRect(0, 0, canvas.width, canvas.height);
              context.drawImage(image, 0, 0);
              pictures.push(canvas.toDataURL("image/png").split(",")[1]);
            }
            return pictures;
            """,
            JsonSerializer.SerializeToElement(drawings));
        return [.. answer.RootElement.GetProperty("result").EnumerateArray().Select(picture => GreyPicture.FromPng(picture.GetBytesFromBase64()))];
    }
}
