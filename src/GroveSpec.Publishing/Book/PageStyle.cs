namespace GroveSpec.Publishing.Book;

/// <summary>The look of the page: quiet paper, one column of text, drawings as wide as it; on paper a drawing a sheet.</summary>
internal static class PageStyle
{
    /// <summary>The page's own rules.</summary>
    public const string Rules = """
        :root{color-scheme:light dark;--ink:#26302b;--soft:#5f6a63;--faint:#b9c0b8;--paper:#fcfbf7;--leaf:#dfe5da;--attention:#9a3324}
        @media (prefers-color-scheme:dark){:root{--ink:#e4e7df;--soft:#a3ada5;--faint:#566059;--paper:#191d1a;--leaf:#39443b;--attention:#f0917f}}
        html{background:var(--paper);color:var(--ink);font:18px/1.45 "EB Garamond",Garamond,"Times New Roman",serif;font-variant-numeric:lining-nums;text-size-adjust:100%}
        body{margin:0 auto;max-width:60rem;padding:2.5rem 1.5rem 4rem;overflow-wrap:break-word}
        .long{overflow-wrap:anywhere}
        h1,h2,h3{font-weight:500;line-height:1.15;margin:0}
        h1{font-size:2.6rem}
        h2{font-size:1.7rem;margin:3rem 0 1rem;padding-bottom:.3rem;border-bottom:1px solid var(--faint)}
        h3{font-size:1.2rem}
        p{margin:.4rem 0}
        .planting+.planting{margin-top:5rem;padding-top:2rem;border-top:3px double var(--faint)}
        .remark,.source,caption,.line{color:var(--soft);font-style:italic}
        .concept{font-size:1.25rem;font-style:italic;margin:1rem 0;max-width:40rem}
        .contents{padding-left:1.2rem}
        a{color:inherit}
        figure{margin:1.2rem 0}
        figure svg{width:100%;height:auto;display:block}
        .check{display:grid;grid-template-columns:8.5rem 1fr;gap:0 1.5rem;margin:1.6rem 0;break-inside:avoid}
        .check>svg{width:8.5rem;height:auto}
        .check>.plain{width:8.5rem}
        .check ol{list-style:none;margin:.5rem 0 0;padding:0}
        .check li{margin:.45rem 0;padding-left:2.2rem;position:relative}
        .ring{position:absolute;left:0;top:.08rem;width:1.5rem;height:1.5rem;line-height:1.5rem;border:1px solid var(--attention);border-radius:50%;color:var(--attention);text-align:center;font-size:.85rem}
        .weight{font-variant-caps:all-small-caps;letter-spacing:.04em;color:var(--attention)}
        .decision{margin:1.6rem 0 2.4rem}
        .why{color:var(--soft);font-size:.95rem}
        table{border-collapse:collapse;width:100%;font-size:.95rem;margin:1rem 0 2rem}
        caption{text-align:left;padding-bottom:.4rem}
        th,td{text-align:left;vertical-align:top;padding:.28rem .9rem .28rem 0;border-bottom:1px solid var(--faint)}
        th{font-weight:500}
        thead th{border-bottom:1px solid var(--ink)}
        td.figure,th.figure{text-align:right;white-space:nowrap}
        .cautions{border-left:3px solid var(--attention);padding-left:1.2rem;break-inside:avoid}
        .imprint{margin-top:4rem;color:var(--soft);font-size:.85rem}
        .v-ink{fill:none;stroke:var(--ink);stroke-width:1.4}
        .v-thin{fill:none;stroke:var(--soft);stroke-width:.9}
        .v-wood{fill:var(--paper);stroke:var(--ink);stroke-width:1.6}
        .v-gone{fill:none;stroke:var(--soft);stroke-width:1;stroke-dasharray:3 2.5}
        .v-mark{fill:none;stroke:var(--attention);stroke-width:1.3;stroke-dasharray:9 3 1.5 3}
        .v-dot{fill:var(--attention);stroke:none}
        @media (max-width:40rem){html{font-size:16px}.check{grid-template-columns:1fr}table{display:block;overflow-x:auto}figure{overflow-x:auto}figure svg{width:44rem}}
        @page{margin:16mm 15mm}
        @media print{
        :root{--ink:#000;--soft:#333;--faint:#999;--paper:#fff;--leaf:#fff;--attention:#000}
        html{font-size:10.5pt}
        body{max-width:none;padding:0}
        h2{margin-top:2rem}
        table{margin-bottom:1rem}
        h2,h3,caption,h2+p,h3+p{break-after:avoid}
        .check{break-inside:auto}
        .check li:first-child{break-before:avoid}
        .why,.source{break-before:avoid;break-inside:avoid}
        .imprint{margin-top:.5rem;break-before:avoid}
        .imprint p{margin:0}
        figure{break-inside:avoid}
        figure svg{max-height:225mm}
        .plates figure:first-child svg{max-height:180mm}
        .decision figure svg{max-height:150mm}
        thead{display:table-header-group;break-after:avoid}
        tr,li{break-inside:avoid}
        tbody tr:nth-child(-n+2),tbody tr:last-child{break-before:avoid}
        .planting+.planting,.contents-list+.planting{break-before:page;border:0;margin:0;padding:0}
        .plates figure+figure{break-before:page}
        }
        """;
}
