### The list of styles and one style.

styles-title = Styles
styles-none = There are no styles yet.
styles-style = Style
styles-newest = Newest revision
styles-revision = Revision { $revision }
styles-draft-only = draft only
styles-threads = Open threads
styles-rounds = Open sample rounds
styles-create = Start a style
styles-create-button = Start the style
