package web

import "net/http"

// routes lists every address of the app.
func (a *app) routes(mux *http.ServeMux) {
	for pattern, page := range map[string]handler{
		"GET /{$}":       a.listSites,
		"GET /site/new":  a.newSite,
		"POST /site/new": a.createSite,
		"GET /import":    a.importFile,
		"POST /import":   a.takeFile,

		"GET /site/{site}":               a.showSite,
		"GET /site/{site}/edit":          a.editSite,
		"POST /site/{site}/edit":         a.saveSite,
		"GET /site/{site}/riders":        a.editRiders,
		"POST /site/{site}/riders":       a.saveRiders,
		"GET /site/{site}/gear":          a.editGear,
		"POST /site/{site}/gear":         a.saveGear,
		"GET /site/{site}/export":        a.exportSite,
		"GET /site/{site}/export/{form}": a.exportForm,
		"GET /site/{site}/photo/{id}":    a.showPhoto,
		"GET /site/{site}/tree/new":      a.newTree,
		"POST /site/{site}/tree/new":     a.createTree,
		"POST /site/{site}/bring/{tree}": a.bringTree,

		"GET /site/{site}/tree/{tree}":                           a.showTree,
		"GET /site/{site}/tree/{tree}/edit":                      a.editTree,
		"POST /site/{site}/tree/{tree}/edit":                     a.saveTree,
		"POST /site/{site}/tree/{tree}/delete":                   a.deleteTree,
		"GET /site/{site}/tree/{tree}/limb/new":                  a.newLimb,
		"POST /site/{site}/tree/{tree}/limb/new":                 a.createLimb,
		"GET /site/{site}/tree/{tree}/member/{member}":           a.editMember,
		"POST /site/{site}/tree/{tree}/member/{member}":          a.saveMember,
		"POST /site/{site}/tree/{tree}/member/{member}/delete":   a.deleteMember,
		"GET /site/{site}/tree/{tree}/margins":                   a.showMargins,
		"GET /site/{site}/tree/{tree}/look/{zone}":               a.lookZone,
		"POST /site/{site}/tree/{tree}/look/{zone}":              a.answerSign,
		"POST /site/{site}/tree/{tree}/look/{zone}/rest":         a.answerRest,
		"POST /site/{site}/tree/{tree}/look/{zone}/afresh":       a.lookAfresh,
		"GET /site/{site}/tree/{tree}/finding/{finding}":         a.editFinding,
		"POST /site/{site}/tree/{tree}/finding/{finding}":        a.saveFinding,
		"GET /site/{site}/tree/{tree}/finding/{finding}/fungus":  a.findingKey,
		"POST /site/{site}/tree/{tree}/finding/{finding}/fungus": a.nameFungus,
		"GET /site/{site}/tree/{tree}/look/{zone}/fungus":        a.lookKey,
		"GET /site/{site}/tree/{tree}/hang/new":                  a.newHang,
		"POST /site/{site}/tree/{tree}/hang/new":                 a.createHang,
		"GET /site/{site}/tree/{tree}/hang/{hang}":               a.showOutcome,
		"GET /site/{site}/tree/{tree}/hang/{hang}/edit":          a.editHang,
		"POST /site/{site}/tree/{tree}/hang/{hang}/edit":         a.saveHang,
		"POST /site/{site}/tree/{tree}/hang/{hang}/delete":       a.deleteHang,
		"POST /site/{site}/tree/{tree}/photo":                    a.addPhoto,
		"POST /site/{site}/tree/{tree}/photo/{id}/delete":        a.deletePhoto,
		"GET /site/{site}/tree/{tree}/history":                   a.showHistory,
		"GET /site/{site}/tree/{tree}/history/{revision}":        a.compareVersion,
		"POST /site/{site}/tree/{tree}/history/{revision}":       a.restoreVersion,
		"GET /site/{site}/tree/{tree}/hang/{hang}/chance":        a.showChance,
		"GET /site/{site}/tree/{tree}/hang/{hang}/test":          a.showLoadTest,
		"GET /site/{site}/tree/{tree}/hang/{hang}/test/new":      a.newLoadTest,
		"POST /site/{site}/tree/{tree}/hang/{hang}/test/new":     a.createLoadTest,

		"GET /measure":                        a.listKinds,
		"GET /measure/{kind}":                 a.measureKind,
		"GET /site/{site}/tree/{tree}/place":  a.searchPlace,
		"POST /site/{site}/tree/{tree}/place": a.askForPlace,

		"GET /signs":     a.showSigns,
		"GET /fungi":     a.showFungi,
		"GET /fungi/key": a.openKey,
		"GET /species":   a.showSpecies,
		"GET /wood":      a.showWood,
		"GET /sources":   a.showSources,
		"GET /settings":  a.editSettings,
		"POST /settings": a.saveSettings,

		"GET /asset/{file}": a.sendAsset,
		"GET /ping":         a.ping,
		"GET /icon.svg":     a.icon,
		"/":                 a.notFound,
	} {
		mux.HandleFunc(pattern, a.page(page))
	}
}
