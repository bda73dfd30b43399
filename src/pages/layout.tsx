/** The sheet that every page is written on: head, the way back, the page's own text, the foot. */
import type { ComponentChildren } from "preact";
import { say } from "../texts/say.ts";
import { LogFoot } from "./log-mark.tsx";

export interface Crumb {
	readonly href: string;
	readonly label: string;
}

export function Layout(props: {
	readonly title: string;
	/** Pages above this one, outermost first. */
	readonly crumbs?: readonly Crumb[];
	/** What stands beside the text on wide screens, and folded below its head on phones: the custody line of an order. */
	readonly spine?: ComponentChildren;
	/** What stands before the spine on phones: what a page with one has to say first. */
	readonly head?: ComponentChildren;
	/** The sign-out form and the like, at the right of the head. */
	readonly actions?: ComponentChildren;
	readonly children: ComponentChildren;
	/** Print sheets have no head and no foot of the site. */
	readonly sheet?: boolean;
	/** For pages that show two things side by side. */
	readonly wide?: boolean;
}) {
	return (
		<html lang="en">
			<head>
				<meta charSet="utf-8" />
				<meta name="viewport" content="width=device-width, initial-scale=1" />
				<meta name="referrer" content="same-origin" />
				<title>{`${props.title} · handover-risk`}</title>
				<link rel="stylesheet" href="/assets/style.css" />
				<link rel="icon" href="data:," />
			</head>
			<body class={props.sheet === true ? "sheet" : "site"}>
				{props.sheet === true ? null : (
					<>
						<a class="skip" href="#content">
							{say("layout.skip")}
						</a>
						<header class="masthead">
							<nav aria-label={say("layout.way-back")}>
								<a class="mark" href="/">
									handover-risk
								</a>
								{(props.crumbs ?? []).map((crumb) => (
									<span key={crumb.href} class="crumb">
										<a href={crumb.href}>{crumb.label}</a>
									</span>
								))}
							</nav>
							{props.actions}
						</header>
					</>
				)}
				{props.spine === undefined ? (
					<div class={props.wide === true ? "single wide" : "single"}>
						<main id="content">
							<h1>{props.title}</h1>
							{props.head}
							{props.children}
						</main>
					</div>
				) : (
					<main id="content" class="with-spine">
						<div class="head">
							<h1>{props.title}</h1>
							{props.head}
						</div>
						<aside class="spine">{props.spine}</aside>
						<div>{props.children}</div>
					</main>
				)}
				{props.sheet === true ? null : (
					<footer class="foot">
						<p>{say("layout.foot")}</p>
						<LogFoot />
					</footer>
				)}
			</body>
		</html>
	);
}
